// What went wrong? The films marked beside the good ones of the same time: what sets them apart,
// what all have in common, and the bottles that a test is worth.
#pragma once

#include "app/session/door.h"
#include "core/ledger/film_compare.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QScrollArea;
class QVBoxLayout;

namespace ullage::app
{

/// Good films are those of the same time without any mark: 14, 45 or 183 days before and after, as
/// the user chooses. Fills itself anew when the book grows.
class CompareDialog : public QDialog
{
    Q_OBJECT

public:
    /// Around this film's run; around the newest film marked if it is empty.
    CompareDialog(Door& door, const QString& film, QWidget* parent = nullptr);

    /// Empty while no film is marked so.
    [[nodiscard]] const ledger::FilmComparison& compared() const { return m_compared; }
    /// Everything it says, line by line, for a screen reader and for tests.
    [[nodiscard]] const QStringList& lines() const { return m_lines; }

signals:
    void filmRequested(const QString& film);
    void bottleRequested(const QString& id, const QString& name);
    /// The user wants to test a bottle now.
    void testRequested(const QString& id);

private:
    void build();
    void fill();
    [[nodiscard]] std::optional<ledger::FilmFault> fault() const;
    void showPage(QWidget* page, QVBoxLayout* column);
    void addHeading(QVBoxLayout* column, const QString& text);
    QLabel* addText(QVBoxLayout* column, const QString& text);
    void addTraits(QVBoxLayout* column, const std::vector<ledger::TraitFound>& found);
    void addOffPlan(QVBoxLayout* column);
    void addRuledOut(QVBoxLayout* column);
    void addFilms(QVBoxLayout* column);
    void addSuspects(QVBoxLayout* column);
    void ask(const QString& batch);
    [[nodiscard]] QString bottleName(const std::string& batch) const;
    void fail(const Error& error);

    Door& m_door;
    QString m_film;
    std::int64_t m_seen = 0; ///< entries in the book when it was filled
    std::vector<ledger::FilmTrace> m_marked;
    ledger::FilmComparison m_compared;
    QStringList m_lines;
    QComboBox* m_fault;
    QComboBox* m_span;
    QScrollArea* m_area;
};

} // namespace ullage::app
