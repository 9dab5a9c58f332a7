// Forms of what is said about a bottle: notes, marks, where and how it stood, how it ended.
#pragma once

#include "app/dialogs/happening_form.h"

class QComboBox;
class QPlainTextEdit;

namespace ullage::app
{

/// Opened and closed again, with nothing taken or added.
class OpenedForm : public HappeningForm
{
    Q_OBJECT

public:
    OpenedForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;

protected:
    void fill(const ledger::Happening& what) override;
};

/// How long it stood open, with how wide a surface.
class StoodOpenForm : public HappeningForm
{
    Q_OBJECT

public:
    StoodOpenForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    [[nodiscard]] QWidget* first() const override { return m_hours; }

protected:
    void fill(const ledger::Happening& what) override;

private:
    QuantityField<chemistry::Hours>* m_hours;
    QuantityField<chemistry::SquareCentimetres>* m_surface;
};

/// Where it stands from then on.
class StoredAtForm : public HappeningForm
{
    Q_OBJECT

public:
    StoredAtForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    [[nodiscard]] Caution caution() const override;
    [[nodiscard]] QWidget* first() const override { return m_temperature; }

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override;

private:
    void warn();

    QLabel* m_now;
    QuantityField<chemistry::Celsius>* m_temperature;
    QLabel* m_warning;
};

/// With what happened, if that is known.
class ContaminatedForm : public HappeningForm
{
    Q_OBJECT

public:
    ContaminatedForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    [[nodiscard]] QWidget* first() const override;

protected:
    void fill(const ledger::Happening& what) override;

private:
    QLineEdit* m_why;
};

/// Takes back what was seen of a precipitate.
class FilteredForm : public HappeningForm
{
    Q_OBJECT

public:
    FilteredForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    [[nodiscard]] Caution caution() const override;

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override;

private:
    QLabel* m_seen;
};

/// Nothing is left to be shaken, and nothing is asked.
class DissolvedForm : public HappeningForm
{
    Q_OBJECT

public:
    DissolvedForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;

protected:
    void fill(const ledger::Happening& what) override;
};

/// Some words are needed.
class NoteForm : public HappeningForm
{
    Q_OBJECT

public:
    NoteForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    bool restIsFine() override;
    [[nodiscard]] QWidget* first() const override;

protected:
    void fill(const ledger::Happening& what) override;

private:
    QPlainTextEdit* m_text;
};

/// The end of a batch; where it goes must be said, and may be a can, which then holds it too.
class DiscardForm : public HappeningForm
{
    Q_OBJECT

public:
    DiscardForm(Door& door, const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<ledger::Happening> happening() const override;
    bool restIsFine() override;
    [[nodiscard]] Caution caution() const override;
    [[nodiscard]] QWidget* first() const override;
    Result<void> enter(const std::string& batch, chemistry::Instant at) const override;
    /// That it was done so: offered next time.
    void rememberWay() const;

protected:
    void fill(const ledger::Happening& what) override;
    void bottleChanged() override;

private:
    void offerCans();
    void showDoubts();
    [[nodiscard]] std::string can() const;

    QLabel* m_what;
    QComboBox* m_how;
    QComboBox* m_can;
    QLabel* m_doubts;
    std::vector<ledger::CanHere> m_cans;   ///< as m_can offers them
    std::optional<formulary::Role> m_role; ///< that the ways offered are for
};

} // namespace ullage::app
