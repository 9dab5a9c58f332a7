// The rail on the left: wordmark, the five pages, and what book is open.
//
// Up and Down move between pages while the rail has the keyboard; Alt+1 to Alt+5 work anywhere in
// the window.
#pragma once

#include <QString>
#include <QWidget>

class QAbstractButton;
class QButtonGroup;
class QLabel;
class QPushButton;

namespace ullage::app
{

enum class Page { Shelf, Bench, DayBook, Cupboard, Formulary };
inline constexpr int kPages = 5;

QString pageName(Page page);

class Rail : public QWidget
{
    Q_OBJECT

public:
    explicit Rail(QWidget* parent = nullptr);

    void setPage(Page page);
    [[nodiscard]] Page page() const;

    /// Name of the open book, as the user knows it ("home.ullage").
    void setBook(const QString& name);
    /// Who else has the book open, or why it can only be read; `trouble` shows it as something to
    /// act on, `more` when it is pointed at.
    void setStanding(const QString& text, bool trouble = false, const QString& more = {});
    /// Under it, what can be done about a book in which something is wrong.
    void offerMending(bool offered);
    /// State of the last backup; `trouble` shows it as something to act on.
    void setBackup(const QString& text, bool trouble = false);

signals:
    void pageChosen(ullage::app::Page page);
    void copiesRequested();
    void salvageRequested();

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void retranslate();

    QButtonGroup* m_pages;
    QLabel* m_book;
    QLabel* m_standing;
    QWidget* m_mending = nullptr; ///< made when it is first offered: most books never need it
    QPushButton* m_copies = nullptr;
    QPushButton* m_salvage = nullptr;
    QLabel* m_backup;
    QString m_bookName;
};

} // namespace ullage::app
