// What the user set, kept outside the book: a book says what happened, never how it is shown.
#pragma once

#include "app/words/units.h"
#include "core/cupboard/known_dates.h"
#include "core/cupboard/plan_for.h"
#include "core/formulary/leaflet_time.h"

#include <QSettings>
#include <QString>

#include <memory>
#include <optional>
#include <vector>

namespace ullage::app
{

/// A file of the book's dates that is kept up to date, and which dates.
struct KeptCalendar {
    QString file;
    cupboard::DateKinds kinds;
};

/// Settings are a file that a user can edit: what cannot be read counts as not set. For the
/// window's thread.
class Preferences
{
public:
    /// In the place the platform keeps settings, or in the file of this name (for tests).
    explicit Preferences(const QString& file = {});

    /// Units and locale together; units are those of the system's country until they are set.
    [[nodiscard]] Wording wording() const;
    void setUnits(const Units& units);

    /// "de", "en"; empty follows the system.
    [[nodiscard]] QString language() const;
    void setLanguage(const QString& code);
    /// The locale for numbers and dates: the system's, or the chosen language's if that is another
    /// language than the system's.
    [[nodiscard]] QLocale locale() const;

    enum class Look { System, Light, Dark }; ///< in the order of ThemeMode
    [[nodiscard]] Look look() const;
    void setLook(Look look);

    /// Path of the book used last; empty before the first.
    [[nodiscard]] QString lastBook() const;
    void setLastBook(const QString& path);

    /// Second folder for copies of the book; empty for none.
    [[nodiscard]] QString secondCopies() const;
    void setSecondCopies(const QString& folder);

    /// A name for this user's windows on this machine, made up when it is first asked for.
    [[nodiscard]] QString machine();

    /// The film maker's figures last used with a developer (a solution's id) at 1+`parts`; empty if
    /// none. Those of one dilution are never those of another. Finite, but not checked otherwise.
    [[nodiscard]] std::vector<chemistry::TimeAtTemperature> baseTimes(const std::string& solution,
                                                                      double parts = 0) const;
    /// The films that they were used for.
    [[nodiscard]] std::vector<formulary::FilmWanted> baseTimesFor(const std::string& solution,
                                                                  double parts = 0) const;
    void setBaseTimes(const std::string& solution,
                      const std::vector<chemistry::TimeAtTemperature>& pairs, double parts = 0,
                      const std::vector<formulary::FilmWanted>& films = {});

    /// Who works at this desk, for the entries made here; empty for nobody in particular.
    [[nodiscard]] QString person() const;
    void setPerson(const QString& name);

    /// A volume or temperature last used, in mL or °C, by the name of the field that asked for it;
    /// never NaN or infinite, but in no range.
    [[nodiscard]] std::optional<double> lastFigure(const QString& name) const;
    void setLastFigure(const QString& name, double value);

    /// What film is planned for besides the known work, on the Cupboard, on paper and in calendars.
    [[nodiscard]] cupboard::Beside beside() const;
    void setBeside(const cupboard::Beside& beside);

    /// Of the book at `path`; empty for none.
    [[nodiscard]] std::optional<KeptCalendar> keptCalendar(const QString& path) const;
    void setKeptCalendar(const QString& path, const std::optional<KeptCalendar>& kept);

    /// For what a page remembers by itself, under its own name.
    [[nodiscard]] QSettings& settings() { return *m_settings; }

    /// As MainWindow::layoutState() made it.
    [[nodiscard]] QByteArray windowGeometry() const;
    void setWindowGeometry(const QByteArray& geometry);

private:
    std::unique_ptr<QSettings> m_settings;
};

} // namespace ullage::app
