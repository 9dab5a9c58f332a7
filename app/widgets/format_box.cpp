#include "app/widgets/format_box.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/words/formulary_words.h"

#include <QAbstractItemView>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QStandardItemModel>
#include <QStyledItemDelegate>

#include <algorithm>
#include <array>
#include <cmath>

namespace ullage::app
{

namespace
{

enum Role { kLongName = Qt::UserRole + 1, kHeading };

// In the list the whole name; in the box itself the short one, which can be typed.
class NameDelegate : public QStyledItemDelegate
{
public:
    using QStyledItemDelegate::QStyledItemDelegate;

protected:
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override
    {
        QStyledItemDelegate::initStyleOption(option, index);
        if (const QString name = index.data(kLongName).toString(); !name.isEmpty())
            option->text = name;
        if (index.data(kHeading).toBool())
            option->font = Theme::font(TextRole::Small);
    }
};

struct LengthUnit {
    const char* name;
    double centimetres;
};
constexpr std::array<LengthUnit, 3> kStripUnits{{{"cm", 1}, {"m", 100}, {"ft", 30.48}}};
constexpr std::array<LengthUnit, 2> kSizeUnits{{{"cm", 1}, {"in", 2.54}}};

QString utf8(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace

FormatBox::FormatBox(const Wording& wording, QWidget* parent)
    : QComboBox(parent), m_sizeLine(new QWidget(parent)), m_what(new PlainLabel(m_sizeLine)),
      m_width(new QuantityEdit(QuantityKind::Number, tr("Width"), wording, m_sizeLine)),
      m_times(new PlainLabel(QStringLiteral("×"), m_sizeLine)),
      m_length(new QuantityEdit(QuantityKind::Number, tr("Length"), wording, m_sizeLine)),
      m_unit(new QComboBox(m_sizeLine))
{
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    setAccessibleName(tr("Film format"));
    setPlainToolTip(this, tr("A format of the list, or a size with its unit such as 9x12cm or "
                             "11x14in"));
    buildSizeLine(wording);
    fill();
    setFormat("135-36");
    connect(this, &QComboBox::editTextChanged, this, [this] {
        showSizeLine();
        emit formatChanged();
    });
    for (QuantityEdit* edit : {m_width, m_length})
        connect(edit, &QuantityEdit::valueChanged, this, &FormatBox::formatChanged);
    connect(m_unit, &QComboBox::currentIndexChanged, this, &FormatBox::formatChanged);
}

void FormatBox::buildSizeLine(const Wording&)
{
    auto* line = new QHBoxLayout(m_sizeLine);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(Space::kTight);
    for (QuantityEdit* edit : {m_width, m_length}) {
        edit->setRange(0.1, 10'000);
        edit->setRequired(true);
        edit->setFixedWidth(70);
    }
    m_width->setAccessibleName(tr("Width of the film"));
    m_length->setAccessibleName(tr("Length of the film"));
    m_unit->setAccessibleName(tr("Unit of the film's size"));
    setTone(m_what, Tone::Quiet);
    line->addWidget(m_what);
    line->addWidget(m_width);
    line->addWidget(m_times);
    line->addWidget(m_length);
    line->addWidget(m_unit);
    line->addStretch(1);
    m_sizeLine->hide();
}

void FormatBox::heading(const QString& text)
{
    addItem(text);
    setItemData(count() - 1, true, kHeading);
    if (auto* items = qobject_cast<QStandardItemModel*>(model()))
        items->item(count() - 1)->setFlags(Qt::NoItemFlags);
}

void FormatBox::fill()
{
    const auto add = [this](const QString& text, const QString& name) {
        addItem(text);
        setItemData(count() - 1, name, kLongName);
    };
    const auto group = [&](chemistry::FormatGroup which) {
        for (const chemistry::FilmFormat& format : chemistry::usualFormats()) {
            if (format.group != which)
                continue;
            const QString text = filmFormatShort(format.code);
            const QString name = filmFormatName(format.code);
            add(text, which == chemistry::FormatGroup::Roll && !name.startsWith(text)
                          ? QStringLiteral("%1 · %2").arg(text, name)
                          : name);
        }
    };
    heading(tr("Rolls"));
    group(chemistry::FormatGroup::Roll);
    for (const chemistry::FilmStrip& strip : chemistry::filmStrips())
        add(utf8(strip.name), filmStripName(strip));
    heading(tr("Sheets"));
    group(chemistry::FormatGroup::Sheet);
    heading(tr("Other"));
    add(tr("other size"), tr("Any other, by its size"));
    setMaxVisibleItems(count());
    view()->setItemDelegate(new NameDelegate(view()));
    constexpr int kRoom = 24; // margins and a scroll bar
    view()->setMinimumWidth(view()->sizeHintForColumn(0) + kRoom);
}

const chemistry::FilmStrip* FormatBox::strip() const
{
    const std::string typed = currentText().trimmed().toStdString();
    const auto strips = chemistry::filmStrips();
    const auto found = std::find_if(strips.begin(), strips.end(),
                                    [&](const auto& strip) { return strip.name == typed; });
    return found == strips.end() ? nullptr : &*found;
}

bool FormatBox::otherSize() const { return currentText().trimmed() == itemText(count() - 1); }

void FormatBox::showSizeLine()
{
    const bool strip = this->strip() != nullptr;
    const bool any = strip || otherSize();
    m_sizeLine->setVisible(any);
    if (!any)
        return;
    m_what->setText(strip ? tr("Length") : tr("Size"));
    m_width->setVisible(!strip);
    m_times->setVisible(!strip);
    const int units = static_cast<int>(strip ? kStripUnits.size() : kSizeUnits.size());
    if (m_unit->count() == units)
        return;
    const QSignalBlocker quiet(m_unit);
    m_unit->clear();
    for (int i = 0; i < units; ++i)
        m_unit->addItem(QString::fromLatin1(
            (strip ? kStripUnits[std::size_t(i)] : kSizeUnits[std::size_t(i)]).name));
}

std::optional<chemistry::FilmSize> FormatBox::typedSize() const
{
    const auto length = m_length->value();
    const auto unit = static_cast<std::size_t>(std::max(0, m_unit->currentIndex()));
    if (!length)
        return std::nullopt;
    chemistry::FilmSize size;
    if (const auto* strip = this->strip()) {
        // To a tenth of a millimetre: 100 ft are 3048 cm.
        const double centimetres = std::round(*length * kStripUnits[unit].centimetres * 100) / 100;
        size = {strip->width, centimetres, chemistry::SizeUnit::Centimetre};
    } else if (const auto width = m_width->value()) {
        size = {*width, *length,
                unit == 0 ? chemistry::SizeUnit::Centimetre : chemistry::SizeUnit::Inch};
    }
    return chemistry::isSize(size) ? std::optional(size) : std::nullopt;
}

std::string FormatBox::format() const
{
    if (strip() || otherSize()) {
        const auto size = typedSize();
        return size ? chemistry::sizeCode(*size) : std::string();
    }
    return readFilmFormat(currentText());
}

void FormatBox::setFormat(const std::string& code)
{
    const QString text = filmFormatShort(code);
    const auto size = chemistry::sizeOf(code);
    const auto* strip = size ? chemistry::stripOf(*size) : nullptr;
    if (strip) {
        setCurrentIndex(findText(utf8(strip->name)));
        showSizeLine();
        m_unit->setCurrentIndex(0);
        m_length->setValue(size->length);
    } else if (const int index = findText(text); index >= 0) {
        setCurrentIndex(index);
    } else {
        setEditText(text);
    }
    lineEdit()->setCursorPosition(0);
    showSizeLine();
    emit formatChanged();
}

QString FormatBox::problem() const
{
    const bool strip = this->strip() != nullptr;
    if (strip || otherSize()) {
        if (!strip && !m_width->isValid())
            return m_width->problem();
        if (!m_length->isValid())
            return m_length->problem();
        if (!typedSize())
            return tr("Film format: the size is at most 10 by 100 metres.");
    }
    if (chemistry::filmsInOne(format()))
        return {};
    return tr("Film format: “%1” is not known; allowed is one of the list, or a size with its unit "
              "such as 9x12cm or 11x14in.")
        .arg(currentText());
}

} // namespace ullage::app
