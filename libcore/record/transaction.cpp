#include "libcore/record/transaction.h"

#include <utility>

namespace pithward::record {

Outcome<Transaction> Transaction::begin(const Connection& connection) {
    return connection.still_there().and_then([&] { return connection.change("BEGIN IMMEDIATE"); }).map([&] {
        return Transaction(connection);
    });
}

Transaction::Transaction(Transaction&& other) noexcept
    : connection_(std::exchange(other.connection_, nullptr)) {}

Transaction::~Transaction() {
    if (connection_ != nullptr) {
        (void)connection_->change("ROLLBACK");
    }
}

Outcome<void> Transaction::commit() {
    auto done = connection_->still_there();
    done = done ? connection_->change("COMMIT") : done;
    if (!done) {
        return done;
    }
    connection_ = nullptr;
    return {};
}

} // namespace pithward::record
