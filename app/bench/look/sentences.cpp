#include "app/bench/look/sentences.h"

#include "app/bench/look/sentence_list.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <vector>

namespace pithward::bench {

namespace {

struct Pattern {
    const char* sentence;
    QRegularExpression form;
};

Pattern pattern_of(const char* sentence) {
    static const QRegularExpression place("%[1-9]");
    const QString text = QString::fromUtf8(sentence);
    QString form;
    qsizetype done = 0;
    for (auto match = place.globalMatch(text); match.hasNext();) {
        const auto one = match.next();
        form += QRegularExpression::escape(text.mid(done, one.capturedStart() - done)) + "(.+?)";
        done = one.capturedEnd();
    }
    form += QRegularExpression::escape(text.mid(done));
    return {sentence, QRegularExpression(QRegularExpression::anchoredPattern(form))};
}

std::vector<Pattern> all_patterns() {
    std::vector<Pattern> patterns;
    for (const char* sentence : library_sentences()) {
        patterns.push_back(pattern_of(sentence));
    }
    return patterns;
}

/// What stands in a place may be a sentence itself, so deep and no deeper.
QString translated(const QString& sentence, int depth) {
    static const std::vector<Pattern> patterns = all_patterns();
    for (const Pattern& pattern : patterns) {
        const auto match = pattern.form.match(sentence);
        if (!match.hasMatch()) {
            continue;
        }
        QString words = QCoreApplication::translate("Sentences", pattern.sentence);
        QStringList parts;
        for (int i = 1; i <= match.lastCapturedIndex(); ++i) {
            const QString part = match.captured(i);
            parts << (depth > 0 ? translated(part, depth - 1) : part);
        }
        // At once, since a part may itself hold a percent sign and a number.
        for (qsizetype at = words.indexOf('%'); at >= 0 && at + 1 < words.size(); at = words.indexOf('%', at)) {
            const int number = words[at + 1].digitValue();
            const bool known = number >= 1 && number <= parts.size();
            words.replace(at, known ? 2 : 0, known ? parts[number - 1] : QString());
            at += known ? parts[number - 1].size() : 1;
        }
        return words;
    }
    return sentence;
}

/// A fault is told as "where: what; remedy": what and remedy are sentences. What stands before them stays.
QString told_fault(const QString& line, int depth) {
    const qsizetype end = line.lastIndexOf("; ");
    if (end < 0) {
        return line;
    }
    const QString remedy = translated(line.mid(end + 2), depth);
    QList<qsizetype> starts{0}; // what comes before may hold colons too, as may a file's name
    for (qsizetype at = line.indexOf(": "); at >= 0 && at < end; at = line.indexOf(": ", at + 2)) {
        starts << at + 2;
    }
    for (const qsizetype start : starts) {
        const QString what = line.mid(start, end - start);
        const QString words = translated(what, depth);
        if (words != what) {
            return line.left(start) + words + "; " + remedy;
        }
    }
    return line.left(end) + "; " + remedy;
}

} // namespace

QString in_window_language(const std::string& sentence) {
    constexpr int deepest = 2;
    const QString line = QString::fromStdString(sentence);
    const QString words = translated(line, deepest);
    return words != line ? words : told_fault(line, deepest);
}

} // namespace pithward::bench
