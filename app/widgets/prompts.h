// The one door for questions to the user: message boxes and file choosers.
//
// Pages ask prompts() and never open such a box themselves, so a test can lay out the answers
// beforehand (tests/app/scripted_prompts.h) and see what was asked.
#pragma once

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

class QWidget;

namespace ullage::app
{

struct Question {
    QString title;
    QString text;        ///< the question itself, one sentence
    QString detail;      ///< what it leads to; may be empty
    QString yes;         ///< what the button does ("Discard", "Replace"), never "OK"
    bool danger = false; ///< the safe answer is the default
    QString no = {};     ///< what the other button says; "Cancel" where that is meant
};

class Prompts
{
public:
    virtual ~Prompts() = default;

    virtual bool confirm(QWidget* parent, const Question& question) = 0;
    virtual void tell(QWidget* parent, const QString& title, const QString& text) = 0;
    /// Something went wrong; `detail` for whoever wants the particulars.
    virtual void fail(QWidget* parent, const QString& title, const QString& text,
                      const QString& detail = {}) = 0;
    /// One line of text; none if the user goes back.
    virtual std::optional<QString> askText(QWidget* parent, const QString& title,
                                           const QString& label, const QString& start = {}) = 0;
    /// Which of several ways; none if the user goes back.
    virtual std::optional<int> choose(QWidget* parent, const QString& title, const QString& label,
                                      const QStringList& ways) = 0;
    /// `filter` as QFileDialog takes it. None if the user goes back.
    virtual std::optional<QString> openFile(QWidget* parent, const QString& title,
                                            const QString& filter) = 0;
    virtual std::optional<QString> saveFile(QWidget* parent, const QString& title,
                                            const QString& name, const QString& filter) = 0;
    virtual std::optional<QString> openFolder(QWidget* parent, const QString& title) = 0;
};

/// What is in force: real boxes unless a test has put its own in place.
Prompts& prompts();

/// Asks prompts(), unless the answer to just that was yes before; `sure` keeps what it was asked
/// of.
bool confirmOnce(QWidget* parent, const Question& question, QString& sure);

/// Puts others in force while it lives.
class PromptsInForce
{
public:
    explicit PromptsInForce(Prompts& prompts);
    ~PromptsInForce();
    PromptsInForce(const PromptsInForce&) = delete;
    PromptsInForce& operator=(const PromptsInForce&) = delete;

private:
    Prompts* m_before;
};

} // namespace ullage::app
