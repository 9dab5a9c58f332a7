// A sheet of labels as it will be printed.
#pragma once

#include "app/paper/label_paint.h"

#include <QWidget>

#include <optional>

namespace ullage::app
{

class LabelPreview : public QWidget
{
    Q_OBJECT

public:
    explicit LabelPreview(QWidget* parent = nullptr);

    /// Its first sheet is shown; nothing for an empty sheet of paper.
    void setJob(std::optional<LabelJob> job);
    [[nodiscard]] const std::optional<LabelJob>& job() const { return m_job; }

    [[nodiscard]] QSize sizeHint() const override { return {360, 480}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {160, 160}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<LabelJob> m_job;
};

} // namespace ullage::app
