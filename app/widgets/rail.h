// The rail on the left: wordmark, the five pages, the guide in hand, and what book is open.
//
// Up and Down move between pages while the rail has the keyboard; Alt+1 to Alt+5 work anywhere in
// the window.
#pragma once

#include <QString>
#include <QWidget>

class QAbstractButton;
class QAction;
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

    /// The guide in hand ("Mixing Dev 2 · 9:44"), a button that leads back to it; empty for none.
    void setGuide(const QString& text);
    /// Name of the open book, as the user knows it ("home.ullage"): a button with the ways to
    /// another one; empty for none.
    void setBook(const QString& name);
    /// Who else has the book open, or why it can only be read; `trouble` shows it as something to
    /// act on, `more` when it is pointed at.
    void setStanding(const QString& text, bool trouble = false, const QString& more = {});
    /// Under it, what can be done about a book in which something is wrong.
    void offerMending(bool offered);
    /// State of the last backup; `trouble` shows it as something to act on.
    void setBackup(const QString& text, bool trouble = false);

signals:
    /// Also when the chosen page is chosen again: something else may stand in its place.
    void pageChosen(ullage::app::Page page);
    void guideRequested();
    void openBookRequested();
    void newBookRequested();
    void copiesRequested();
    void salvageRequested();

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void retranslate();
    void makeBook();

    QButtonGroup* m_pages;
    bool m_again = false;           ///< the page being pressed is chosen already
    QPushButton* m_guide = nullptr; ///< made when there is one
    QPushButton* m_book = nullptr;  ///< likewise
    QAction* m_openBook = nullptr;
    QAction* m_newBook = nullptr;
    QLabel* m_standing;
    QWidget* m_mending = nullptr; ///< made when it is first offered: most books never need it
    QPushButton* m_copies = nullptr;
    QPushButton* m_salvage = nullptr;
    QLabel* m_backup;
    QString m_bookName;
};

} // namespace ullage::app
