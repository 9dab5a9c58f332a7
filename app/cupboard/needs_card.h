// What will be needed: the strip of weeks and the known work that it goes by.
#pragma once

#include "app/cupboard/need_views.h"
#include "app/widgets/card.h"

class QLabel;
class QPushButton;

namespace ullage::app
{

class NeedStrip;
class PaceChoice;

enum class WorkAction { New, Edit, SkipOnce, TakeAway, Import, Export };

class NeedsCard : public Card
{
    Q_OBJECT

public:
    explicit NeedsCard(QWidget* parent = nullptr);

    void setNeeds(const NeedsView& needs);
    /// As PaceChoice has them.
    [[nodiscard]] cupboard::Beside beside() const;
    void setBeside(const cupboard::Beside& beside);

signals:
    void besideChanged();
    /// `work` is empty for a new one, and for calendars.
    void workRequested(ullage::app::WorkAction action, const QString& work);

private:
    QWidget* newLine(const WorkLine& work);

    NeedStrip* m_strip;
    PaceChoice* m_pace;
    QLabel* m_nothing;
    QLabel* m_leftOut;
    QWidget* m_works = nullptr;
    QVBoxLayout* m_place;
};

} // namespace ullage::app
