// What the libraries say in English, in the language of the window.
#include "app/bench/look/sentences.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>
#include <QTranslator>
#include <QXmlStreamReader>

namespace pithward::bench {
namespace {

/// A language that marks each sentence and turns its parts round.
class Marked : public QTranslator {
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* text, const char*, int) const override {
        return QByteArray(context) == "Sentences" ? "<" + QString::fromUtf8(text) + ">" : QString();
    }
};

TEST(Sentences, StayAsTheyAreInEnglish) {
    for (const char* sentence :
         {"this boundary is annual with a probability of only 71 %", "look at it; if it closes a year, add it",
          "a person wrote this, 50 %1 sure", "", "a weak change here may be a boundary (12 %): soft on both sides"}) {
        EXPECT_EQ(in_window_language(sentence), QString(sentence));
    }
}

TEST(Sentences, AreTranslatedWithTheSentencesInThem) {
    Marked marked;
    QCoreApplication::installTranslator(&marked);
    EXPECT_EQ(in_window_language("a weak change here may be a boundary (12 %): soft on both sides"),
              QString("<a weak change here may be a boundary (12 %): <soft on both sides>>"));
    EXPECT_EQ(in_window_language("cored in July, in its growing season: the outermost ring is unfinished, but the wood "
                                 "under the bark is taken as complete"),
              QString("<cored in <July>, in its growing season: the outermost ring is unfinished, but the wood under "
                      "the bark is taken as <complete>>"));
    EXPECT_EQ(in_window_language("the pith is 6.1 mm to 33.5 mm from the innermost boundary, but more than 40.0 mm by "
                                 "the stem's radius"),
              QString("<the pith is 6.1 mm to 33.5 mm from the innermost boundary, but more than 40.0 mm by <the "
                      "stem's radius>>"));
    EXPECT_EQ(in_window_language("nobody knows"), QString("nobody knows"));
    EXPECT_EQ(in_window_language("/a: b; c/d.csv: writing broke off: No space left; check the space left on the disk"),
              QString("/a: b; c/d.csv: <writing broke off: No space left>; <check the space left on the disk>"));
    EXPECT_EQ(in_window_language("a: what nobody knows; ask somebody"), QString("a: what nobody knows; ask somebody"));
    QCoreApplication::removeTranslator(&marked);
}

/// The sentences that can be translated, without their places.
QString known_sentences() {
    QFile file(QString(PITHWARD_SOURCES) + "/resources/translations/pithward_de.ts");
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    QString context;
    QStringList sentences;
    while (!xml.atEnd()) {
        if (xml.readNext() == QXmlStreamReader::StartElement && xml.name() == u"name") {
            context = xml.readElementText();
        } else if (xml.isStartElement() && xml.name() == u"source" && context == "Sentences") {
            sentences << xml.readElementText();
        }
    }
    return sentences.join('\n');
}

/// The longer texts of a source, each in one however it is broken into lines.
QStringList texts_of(const QString& path) {
    QFile file(QString(PITHWARD_SOURCES) + "/" + path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QString code = QString::fromUtf8(file.readAll());
    static const QRegularExpression broken("\"\\s*\n\\s*\"");
    static const QRegularExpression text("\"([^\"\n]*)\"");
    code.replace(broken, "");
    QStringList texts;
    for (auto match = text.globalMatch(code); match.hasNext();) {
        const QString one = match.next().captured(1);
        if (one.trimmed().count(' ') >= 2) {
            texts << one;
        }
    }
    return texts;
}

TEST(Sentences, OfFindingsAreAllInTheList) {
    const QString known = known_sentences();
    for (const char* path :
         {"libimaging/boundary/findings.cpp", "libimaging/boundary/path_to_pith.cpp",
          "libimaging/boundary/wood/judge_wood.cpp", "libimaging/calibrate/scale_findings.cpp",
          "libcore/field/depth.cpp", "libcore/field/lean.cpp", "libcore/field/outer.cpp", "libcore/field/season.cpp",
          "libcore/field/tree_ages.cpp", "libcore/pith/bends.cpp", "libcore/pith/judge_pith.cpp",
          "libcore/pith/pith_by_hand.cpp", "libcore/dating/slips/slip_finding.cpp", "libcore/dating/slips/slip.cpp",
          "libcore/measure/doubtful_places.cpp"}) {
        const QStringList texts = texts_of(path);
        for (const QString& text : texts) {
            static const QRegularExpression ends("^[ ,;:(]+|[ ,;:(]+$");
            const QString core = QString(text).remove(ends);
            EXPECT_TRUE(known.contains(core)) << path << ": " << text.toStdString();
        }
    }
}

} // namespace
} // namespace pithward::bench
