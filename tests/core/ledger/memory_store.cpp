#include "tests/core/ledger/memory_store.h"

namespace ullage::ledger
{

namespace
{

// Writes fields one after another; an optional that is empty shows as a dash.
class Printer
{
public:
    template <class... Fields>
    Printer& operator()(const Fields&... fields)
    {
        (field(fields), ...);
        return *this;
    }
    [[nodiscard]] std::string text() const { return m_out.str(); }

private:
    void field(const std::string& text) { m_out << '"' << text << "\" "; }
    void field(std::string_view text) { m_out << text << ' '; }
    void field(const char* text) { m_out << text << ' '; }
    void field(double number) { m_out << number << ' '; }
    void field(bool truth) { m_out << (truth ? "yes " : "no "); }
    void field(chemistry::Instant at) { m_out << at.time_since_epoch().count() << ' '; }
    void field(chemistry::Celsius temperature) { field(temperature.value()); }
    template <class Tag>
    void field(chemistry::Quantity<Tag> quantity)
    {
        field(quantity.value());
    }
    template <class T>
    void field(const std::optional<T>& value)
    {
        value ? field(*value) : field("-");
    }
    void field(const Load& load)
    {
        for (const FilmCount& film : load.films) {
            (*this)(film.format, film.count);
        }
        field(load.area);
    }

    std::ostringstream m_out;
};

struct PrintWhat {
    Printer& out;

    void operator()(const Mixed& e) const
    {
        out(e.solution, e.vessel, e.volume, e.name, e.packet, e.historyUnknown);
    }
    void operator()(const Processed& e) const { out(e.load, e.used, e.lost, e.oneShot, e.run); }
    void operator()(const ToppedUp& e) const { out(e.volume, e.from); }
    void operator()(const Drawn& e) const { out(e.volume, e.why); }
    void operator()(const Moved& e) const { out(e.vessel); }
    void operator()(const StoodOpen& e) const { out(e.time, e.surface); }
    void operator()(const StoredAt& e) const { out(e.temperature); }
    void operator()(const ClearingTested& e) const { out(e.time, e.temperature); }
    void operator()(const StripTested& e) const { out(e.density, e.factor, e.passed); }
    void operator()(const Looked& e) const { out(e.passed, e.why); }
    void operator()(const Contaminated& e) const { out(e.why); }
    void operator()(const Noted& e) const { out(e.text); }
    void operator()(const Discarded& e) const { out(e.how); }
    void operator()(const Voided& e) const { out(e.voids, e.why); }
    void operator()(const OpenedPacket& e) const { out(e.packet); }
    void operator()(const Opened&) const {}
    void operator()(const Dissolved&) const {}
};

struct PrintEntry {
    Printer& out;

    void operator()(const formulary::Solution& s) const
    {
        out(code(s.role), s.name, s.capacity, s.wear.percent, double(s.wear.rule), s.q10);
        for (const auto& step : s.wear.steps) {
            out(step.from, step.factor);
        }
        out(s.keeping.full, s.keeping.half, s.keeping.tray, s.oxygenFactor, s.silverPerFilm);
        out(s.bromidePerFilm, s.freshClearing, s.silverLimit, s.tabularFactor);
        out(s.replenishPerFilm, s.replaces);
        for (const auto& [figure, source] : s.sources) {
            out(figure, source);
        }
    }
    void operator()(const formulary::Vessel& v) const
    {
        out(v.name, v.capacity, code(v.material), v.squeezed, v.wall, v.permeability, v.capLeak);
    }
    void operator()(const FilmRecord& f) const
    {
        out(f.run, f.format, f.name, f.exposureIndex, f.notes);
    }
    void operator()(const Packet& p) const
    {
        out(p.solution, p.makes, p.lot, p.bought, p.useBy, p.cost, p.currency);
    }
    void operator()(const Chemical& c) const { out(c.name, c.cas, c.grams); }
    void operator()(const formulary::DevelopmentFigure& f) const
    {
        out(f.film, f.developer, f.dilution, f.exposureIndex, f.source, f.notes, f.replaces);
        out(f.withdrawn);
        for (const auto& time : f.times) {
            out(time.temperature, time.time);
        }
    }
    void operator()(const FilmMark& m) const
    {
        out(m.film, m.at, m.fault ? code(*m.fault) : "-", m.takesBack, m.note, m.by);
    }
    void operator()(const Event& e) const
    {
        out(e.kind(), e.batch, e.at, e.airLeft);
        std::visit(PrintWhat{out}, e.what);
    }
};

} // namespace

std::string printed(const Entry& entry)
{
    Printer out;
    out(entry.type(), entry.id());
    std::visit(PrintEntry{out}, entry.what);
    return out.text();
}

} // namespace ullage::ledger
