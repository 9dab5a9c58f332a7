// What the shelf says of the selected bottle, in finished words and plain charts.
#pragma once

#include "app/charts/chart.h"
#include "app/shelf/bottle_actions.h"
#include "app/widgets/verdict_mark.h"
#include "app/words/explanation.h"
#include "app/words/factor_row.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace ullage::app
{

/// A bottle that this one was filled from, or that was filled from it.
struct FilledBottle {
    QString id;
    QString name;
    bool into = false; ///< from that one into this one
    friend bool operator==(const FilledBottle&, const FilledBottle&) = default;
};

struct SelectedBottle {
    QString id;
    QString name; ///< "Dev 14"

    QString nextTitle;  ///< heading of the first card: "Dev 14, MQ borax · next film"
    QString nextTime;   ///< "12:35"; empty where there is no time to give
    QString nextDetail; ///< beside the time: "at 20 °C, 1 film of 135-36, 8th in 1 L"
    std::vector<FactorRow> factors;
    QString noTime; ///< in place of the time: why there is none and what would give one

    VerdictLook verdict = VerdictLook::Good;
    QString why;                      ///< "Why: Good"
    QStringList reasons;              ///< sentences, the gravest first
    std::vector<Explanation> figures; ///< "Where from?" of every figure; the time's stands first
    QString closing; ///< a last quiet sentence ("Films run out first."); may be empty
    QString cost;    ///< what it cost so far, a quiet sentence; empty where nothing is known

    std::vector<FilledBottle> filled; ///< each other bottle once a way, the newest first

    std::optional<ChartSpec> left;    ///< what is left, over time
    QString noLeft;                   ///< where that cannot be drawn
    std::optional<ChartSpec> air;     ///< oxygen by the way it came; another face of that card
    QStringList help;                 ///< what would keep the air out, under that chart
    std::optional<ChartSpec> perFilm; ///< time for each film, or a fixer's clearing times
    QString perFilmTitle;             ///< heading of that card while there is no chart
    QString noPerFilm;
    std::optional<ChartSpec> strips; ///< a developer's control strips; another face of that card
    bool hasStrips = false;          ///< whether it can have any, so that an empty face shows
    QStringList stripWords;          ///< under that chart, or in place of it

    RefusedActions refused; ///< what cannot be done with it
    bool unread = false; ///< not as it was entered: the book is to be checked, or a copy restored
};

} // namespace ullage::app
