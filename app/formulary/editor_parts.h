// What the editors of the formulary are laid out with.
#pragma once

class QFormLayout;
class QString;
class QVBoxLayout;
class QWidget;

namespace ullage::app
{

class Card;

/// Adds a field with its name before it, on one line with what is typed.
void addField(QFormLayout& form, const QString& name, QWidget* field);

/// Adds the fields in a card of their own, and beside it the card of what they come to.
void addCards(QVBoxLayout& body, QFormLayout* fields, Card* shown);

} // namespace ullage::app
