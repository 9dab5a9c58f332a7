// The named colours of the program, one set for light and one for dark.
//
// Text colours reach a contrast of 4.5 to 1 on every ground they are used on (WCAG 2 AA);
// tests/app/widgets/theme_test.cpp holds them to it. Nothing is told by colour alone.
#pragma once

#include <QColor>

namespace ullage::app
{

struct Colours {
    // Grounds.
    QColor paper;    ///< the window
    QColor rail;     ///< the left rail
    QColor card;     ///< cards, inputs, menus
    QColor raised;   ///< quiet buttons on a card, hovered rows
    QColor selected; ///< the chosen row of a list
    QColor caution;  ///< ground of a caution
    QColor calm;     ///< ground of a cue that all is well
    QColor tape;     ///< the label on a bottle
    QColor glass;    ///< inside of a bottle
    // Lines.
    QColor border;
    QColor hairline;
    QColor cautionBorder;
    QColor tapeBorder;
    QColor shelf;
    QColor hatch; ///< strokes of the ullage
    QColor focus; ///< ring round what has the keyboard
    // Words.
    QColor ink;
    QColor quiet; ///< second-rank words
    QColor onInk; ///< words on a primary button, which is ink
    QColor tapeInk;
    QColor tapeQuiet;
    // Accents: words, marks and chart lines.
    QColor brown; ///< films
    QColor blue;  ///< standing; Test first
    QColor green; ///< Good
    QColor amber; ///< Near its end; cautions
    QColor red;   ///< Discard
    QColor grey;  ///< age alone
    QColor honey; ///< the next film
    QColor sand;  ///< films to come
    QColor fan;   ///< range of a forecast
};

const Colours& lightColours();
const Colours& darkColours();
/// Deep red on black for work under a printing safelight: nothing but the red of the screen shines.
const Colours& darkRoomColours();

/// Contrast of two opaque colours as WCAG 2 defines it, 1 to 21.
double contrast(const QColor& a, const QColor& b);

/// `share` of `b` in `a`, 0 to 1.
QColor blend(const QColor& a, const QColor& b, double share);

} // namespace ullage::app
