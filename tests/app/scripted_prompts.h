// Questions to the user, answered beforehand.
#pragma once

#include "app/widgets/prompts.h"

#include <optional>
#include <vector>

namespace ullage::app
{

/// Answers from a queue and keeps what was asked. Without an answer left it goes back (no, none).
class ScriptedPrompts : public Prompts
{
public:
    void answer(bool yes) { m_answers.push_back({.yes = yes, .text = {}, .way = {}}); }
    void answer(const QString& text)
    {
        m_answers.push_back({.yes = true, .text = text, .way = {}});
    }
    void answerWay(int way) { m_answers.push_back({.yes = true, .text = {}, .way = way}); }

    /// "title|text" of everything asked or told, in order.
    [[nodiscard]] const QStringList& asked() const { return m_asked; }
    [[nodiscard]] std::size_t answersLeft() const { return m_answers.size(); }

    bool confirm(QWidget* parent, const Question& question) override;
    void tell(QWidget* parent, const QString& title, const QString& text) override;
    void fail(QWidget* parent, const QString& title, const QString& text,
              const QString& detail) override;
    std::optional<QString> askText(QWidget* parent, const QString& title, const QString& label,
                                   const QString& start) override;
    std::optional<int> choose(QWidget* parent, const QString& title, const QString& label,
                              const QStringList& ways) override;
    std::optional<QString> openFile(QWidget* parent, const QString& title,
                                    const QString& filter) override;
    std::optional<QString> saveFile(QWidget* parent, const QString& title, const QString& name,
                                    const QString& filter) override;
    std::optional<QString> openFolder(QWidget* parent, const QString& title) override;

private:
    struct Answer {
        bool yes = false;
        std::optional<QString> text;
        std::optional<int> way;
    };
    Answer next(const QString& title, const QString& text);

    std::vector<Answer> m_answers;
    QStringList m_asked;
};

inline ScriptedPrompts::Answer ScriptedPrompts::next(const QString& title, const QString& text)
{
    m_asked << title + u'|' + text;
    if (m_answers.empty())
        return {};
    const Answer answer = m_answers.front();
    m_answers.erase(m_answers.begin());
    return answer;
}

inline bool ScriptedPrompts::confirm(QWidget*, const Question& question)
{
    return next(question.title, question.text).yes;
}

inline void ScriptedPrompts::tell(QWidget*, const QString& title, const QString& text)
{
    m_asked << title + u'|' + text;
}

inline void ScriptedPrompts::fail(QWidget*, const QString& title, const QString& text,
                                  const QString&)
{
    m_asked << title + u'|' + text;
}

inline std::optional<QString> ScriptedPrompts::askText(QWidget*, const QString& title,
                                                       const QString& label, const QString&)
{
    return next(title, label).text;
}

inline std::optional<int> ScriptedPrompts::choose(QWidget*, const QString& title,
                                                  const QString& label, const QStringList&)
{
    return next(title, label).way;
}

inline std::optional<QString> ScriptedPrompts::openFile(QWidget*, const QString& title,
                                                        const QString& filter)
{
    return next(title, filter).text;
}

inline std::optional<QString> ScriptedPrompts::saveFile(QWidget*, const QString& title,
                                                        const QString& name, const QString&)
{
    return next(title, name).text;
}

inline std::optional<QString> ScriptedPrompts::openFolder(QWidget*, const QString& title)
{
    return next(title, {}).text;
}

} // namespace ullage::app
