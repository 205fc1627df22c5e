// The handbook in the program: every link leads somewhere, and every kind of finding is told of.
#include "app/bench/panels/handbook.h"
#include "libcore/specimen/finding.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTextBrowser>
#include <set>

namespace pithward::bench {
namespace {

QString page(const QString& path) {
    QFile file(":/docs/" + path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

TEST(HandbookPages, EachOfTheirLinksLeadsToAPage) {
    for (const char* name : {"index", "first-hour", "views", "findings", "limits"}) {
        const QString text = page(QString("handbook/%1.md").arg(name));
        static const QRegularExpression link("\\]\\(([^)]+)\\)");
        for (auto match = link.globalMatch(text); match.hasNext();) {
            const QString target = QDir::cleanPath("handbook/" + match.next().captured(1));
            EXPECT_TRUE(QFile::exists(":/docs/" + target)) << name << ": " << target.toStdString();
        }
    }
}

TEST(HandbookPages, EveryKindOfFindingIsToldOf) {
    const QString text = page("handbook/findings.md");
    constexpr int more_than_there_are = 64;
    std::set<std::string> kinds;
    for (int i = 0; i < more_than_there_are; ++i) {
        kinds.insert(word(static_cast<FindingKind>(i)));
    }
    for (const std::string& kind : kinds) {
        EXPECT_TRUE(text.contains(QString("(`%1`)").arg(kind.c_str()))) << kind;
    }
    EXPECT_GE(kinds.size(), 13U);
}

TEST(HandbookPages, ALinkIsFollowedAndTheWayBackIsThere) {
    Handbook handbook;
    EXPECT_TRUE(handbook.pages().toPlainText().contains("A first hour"));
    handbook.pages().setSource(QUrl("qrc:/docs/handbook/findings.md"));
    EXPECT_TRUE(handbook.pages().toPlainText().contains("Possibly overlooked"));
    handbook.pages().backward();
    EXPECT_TRUE(handbook.pages().toPlainText().contains("A first hour"));
}

} // namespace
} // namespace pithward::bench
