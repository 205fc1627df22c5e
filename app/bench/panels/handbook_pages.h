#pragma once

#include <QTextBrowser>

namespace pithward::bench {

/// Pages with pictures no wider than the room beside the text; on a fine screen they keep their own pixels.
class HandbookPages : public QTextBrowser {
    Q_OBJECT

public:
    using QTextBrowser::QTextBrowser;

protected:
    QVariant loadResource(int type, const QUrl& name) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    /// Pixels of the room for a picture.
    [[nodiscard]] int room() const;

    int room_ = 0; ///< That the pictures were made for.
};

} // namespace pithward::bench
