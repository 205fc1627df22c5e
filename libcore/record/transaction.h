#pragma once

#include "libcore/record/connection.h"

namespace pithward::record {

/// A transaction that is taken back unless it is committed. It waits for other writers at its start, not at its end.
class Transaction {
public:
    [[nodiscard]] static Outcome<Transaction> begin(const Connection& connection);
    ~Transaction();
    Transaction(Transaction&& other) noexcept;
    Transaction& operator=(Transaction&&) = delete;
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    /// When this answers, all is on the disk, in the file that was opened.
    [[nodiscard]] Outcome<void> commit();

private:
    explicit Transaction(const Connection& connection)
        : connection_(&connection) {}
    const Connection* connection_;
};

} // namespace pithward::record
