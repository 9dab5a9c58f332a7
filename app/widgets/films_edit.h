// The films of a load: two lines a film, any number of films, formats mixed.
#pragma once

#include "app/words/units.h"
#include "core/formulary/leaflet_time.h"
#include "core/ledger/run_state.h"

#include <QWidget>

#include <optional>
#include <vector>

class QCompleter;
class QStringListModel;
class QLineEdit;
class QVBoxLayout;

namespace ullage::app
{

class CountBox;
class FormatBox;
class QuantityEdit;

class FilmsEdit : public QWidget
{
    Q_OBJECT

public:
    explicit FilmsEdit(const Wording& wording, QWidget* parent = nullptr);

    /// At least one line is always there.
    void setFilms(const std::vector<ledger::RunFilm>& films);
    /// Lines whose format is understood.
    [[nodiscard]] std::vector<ledger::RunFilm> films() const;
    /// Of each of films() the place that it had in setFilms(); empty for a line added since.
    [[nodiscard]] std::vector<std::optional<std::size_t>> origins() const;
    /// The films as far as they are typed to the end, or are a known film's name: what a time may
    /// go by while a name is still being typed.
    [[nodiscard]] std::vector<formulary::FilmWanted> wanted() const;
    /// Names that are completed as one types.
    void setKnownNames(const QStringList& names);
    /// Why a line was not understood; empty if all were.
    [[nodiscard]] QString problem() const;
    /// The first line's format.
    [[nodiscard]] QWidget* firstForKeys() const;
    void addFilm(const ledger::RunFilm& film);
    void setNewFormat(const QString& format) { m_format = format; }

signals:
    void changed();

private:
    struct Row {
        QWidget* line;
        FormatBox* format;
        CountBox* count;
        QuantityEdit* index;
        QLineEdit* name;
        QLineEdit* notes;
        formulary::FilmWanted settled;
        std::optional<std::size_t> origin = {};
    };
    void remove(QWidget* line);
    void settle(QWidget* line);
    void takeKnownName(QWidget* line, const QString& name);

    Wording m_wording;
    QString m_format = QStringLiteral("135-36");
    QVBoxLayout* m_lines;
    std::vector<Row> m_rows;
    QStringListModel* m_names;
};

} // namespace ullage::app
