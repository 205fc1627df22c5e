// The window's words in other languages: all of them are there, and nothing that is put into them is lost.
#include "app/bench/look/language.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTranslator>
#include <QXmlStreamReader>
#include <set>

namespace pithward::bench {
namespace {

const QString sources = PITHWARD_SOURCES;

struct Message {
    QString context;
    QString source;
    QStringList translations;
    bool finished = true;
};

std::vector<Message> messages_of(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml(&file);
    std::vector<Message> messages;
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        if (xml.name() == u"name") {
            context = xml.readElementText();
        } else if (xml.name() == u"message") {
            messages.push_back({context, {}, {}, true});
        } else if (xml.name() == u"source") {
            messages.back().source = xml.readElementText();
        } else if (xml.name() == u"translation") {
            messages.back().finished = !xml.attributes().hasAttribute("type");
            const QString all = xml.readElementText(QXmlStreamReader::IncludeChildElements);
            messages.back().translations << all.trimmed();
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return messages;
}

std::set<QString> places_in(const QString& text) {
    static const QRegularExpression place("%[0-9n]");
    std::set<QString> places;
    for (auto match = place.globalMatch(text); match.hasNext();) {
        places.insert(match.next().captured());
    }
    return places;
}

TEST(Languages, EveryWordIsTranslatedWithItsPlaces) {
    for (const Language& language : languages()) {
        if (QString(language.code) == "en") {
            continue; // the words of the code
        }
        const auto messages = messages_of(sources + "/resources/translations/pithward_" + language.code + ".ts");
        EXPECT_GT(messages.size(), 500U);
        for (const Message& message : messages) {
            const std::string what = message.source.toStdString();
            EXPECT_TRUE(message.finished) << what;
            for (const QString& text : message.translations) {
                EXPECT_FALSE(text.isEmpty()) << what;
                EXPECT_EQ(places_in(text), places_in(message.source)) << what;
            }
        }
    }
}

TEST(Languages, TheFilesHoldTheWordsThatTheCodeHasNow) {
    const QTemporaryDir folder;
    const QString fresh = folder.filePath("fresh.ts");
    QProcess update;
    update.start(PITHWARD_LUPDATE, {"-silent", "-I", sources, "-locations", "none", sources + "/app", "-ts", fresh});
    ASSERT_TRUE(update.waitForFinished(60'000)) << update.errorString().toStdString();
    std::set<std::pair<QString, QString>> now;
    for (const Message& message : messages_of(fresh)) {
        now.insert({message.context, message.source});
    }
    ASSERT_GT(now.size(), 500U);
    std::set<std::pair<QString, QString>> known;
    for (const Message& message : messages_of(sources + "/resources/translations/pithward_de.ts")) {
        known.insert({message.context, message.source});
    }
    for (const auto& [context, source] : now) {
        EXPECT_TRUE(known.contains({context, source}))
            << context.toStdString() << ": " << source.toStdString() << "; see DEVELOPERS.md, A language";
    }
    for (const auto& [context, source] : known) {
        EXPECT_TRUE(now.contains({context, source})) << "no longer used: " << source.toStdString();
    }
}

TEST(Languages, TheProgramSpeaksThem) {
    QTranslator words;
    ASSERT_TRUE(words.load(QLocale("de_AT"), "pithward", "_", ":/translations"));
    EXPECT_EQ(words.translate("Wording", "Conifer"), QStringLiteral("Nadelholz"));
    EXPECT_EQ(words.translate("pithward::bench::ProjectList", "%n open", nullptr, 3), QStringLiteral("%n offen"));
}

} // namespace
} // namespace pithward::bench
