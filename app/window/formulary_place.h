// The Formulary in the window.
#pragma once

#include <QObject>

#include "app/window/window_parts.h"

#include <memory>

#include <cstdint>

namespace ullage::app
{

class FormularyPage;
class StoreThread;

/// For the window's thread. The page is told of the book's formulary when it is seen and the book
/// has grown since, not else.
class FormularyPlace : public QObject
{
    Q_OBJECT

public:
    explicit FormularyPlace(const WindowParts& parts, QObject* parent = nullptr);
    ~FormularyPlace() override;

    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void make();
    void wordAnew();
    void refresh();
    void refreshAll();
    void fill();
    void askTests(const QString& solution);

    WindowParts m_parts;
    FormularyPage* m_page = nullptr;       ///< the window's
    std::unique_ptr<StoreThread> m_thread; ///< on it tests are gathered from all bottles
    QString m_language;                    ///< that it was made in: it words itself then
    std::int64_t m_entries = -1; ///< in the book when the page was told; -1 for to be told
};

} // namespace ullage::app
