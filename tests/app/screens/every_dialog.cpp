#include "tests/app/screens/every_screen.h"

#include "app/bench/tank_edit.h"
#include "app/bench/template_dialog.h"
#include "app/charts/chart_table_dialog.h"
#include "app/cupboard/add_item_dialog.h"
#include "app/cupboard/can_dialogs.h"
#include "app/cupboard/code_dialog.h"
#include "app/cupboard/item_deed_dialog.h"
#include "app/cupboard/item_form.h"
#include "app/cupboard/work_dialog.h"
#include "app/daybook/corrections.h"
#include "app/daybook/forgotten_dialog.h"
#include "app/daybook/take_back_dialog.h"
#include "app/dialogs/decant_dialog.h"
#include "app/dialogs/exchange_dialog.h"
#include "app/dialogs/happening_dialog.h"
#include "app/dialogs/history_dialog.h"
#include "app/dialogs/import_dialog.h"
#include "app/dialogs/labels_dialog.h"
#include "app/dialogs/mix_dialog.h"
#include "app/dialogs/run_dialog.h"
#include "app/dialogs/sheet_dialog.h"
#include "app/films/compare_dialog.h"
#include "app/films/film_card.h"
#include "app/films/films_dialog.h"
#include "app/formulary/solution_editor.h"
#include "app/formulary/time_editor.h"
#include "app/formulary/vessel_editor.h"
#include "app/session/session_door.h"
#include "app/shelf/shelf_charts.h"
#include "app/widgets/choice_dialog.h"
#include "app/window/about_dialog.h"
#include "app/window/calendar_dialog.h"
#include "app/window/cautions_dialog.h"
#include "app/window/copies_dialog.h"
#include "app/window/copy_words.h"
#include "app/window/findings_dialog.h"
#include "app/window/offered_work_dialog.h"
#include "app/window/salvage_dialog.h"
#include "app/window/sheet_judge.h"
#include "app/words/error_words.h"
#include "app/words/event_words.h"
#include "tests/app/scripted_prompts.h"

#include <QComboBox>
#include <QCoreApplication>

#include <memory>
#include <set>

namespace ullage::app
{

namespace
{

using namespace std::chrono_literals;

const QString kPlace = QStringLiteral("/media/darkroom/copies");
const QString kStick = QStringLiteral("/media/stick/darkroom");

void show(QWidget& dialog, const QString& name, const SeenScreen& seen)
{
    dialog.show();
    letSettle();
    seen(dialog, name);
}

// One entry of every kind that can be corrected.
void seeCorrections(Door& door, const SeenScreen& seen)
{
    std::set<std::size_t> kinds;
    for (const Bottle& bottle : door.bottles()) {
        const auto events = door.events(bottle.batch.id);
        if (!events)
            continue;
        for (const ledger::Event& event : *events) {
            if (!canCorrect(event) || !kinds.insert(event.what.index()).second)
                continue;
            const std::unique_ptr<CorrectingDialog> dialog(
                newCorrection(door, eventKindName(event), {event}));
            show(*dialog, QStringLiteral("correct-%1").arg(event.what.index()), seen);
        }
    }
}

// As it opens, and with what is said when nothing was filled in.
void showForm(FormDialog& dialog, const QString& name, const SeenScreen& seen)
{
    show(dialog, name, seen);
    ScriptedPrompts back; // whatever is asked: not like that
    const PromptsInForce inForce(back);
    dialog.accept();
    if (!dialog.isVisible())
        return;
    letSettle();
    seen(dialog, name + QStringLiteral("-refused"));
}

const Bottle* ofRole(Door& door, formulary::Role role)
{
    for (const Bottle& bottle : door.bottles()) {
        if (bottle.batch.solution->role == role &&
            bottle.assessment.verdict != ledger::Verdict::Discard)
            return &bottle;
    }
    return nullptr;
}

void seeDeeds(Door& door, const SeenScreen& seen)
{
    const Bottle developer = *ofRole(door, formulary::Role::Developer);
    const Bottle fixer = *ofRole(door, formulary::Role::Fixer);
    {
        MixDialog dialog(door);
        show(dialog, QStringLiteral("mix"), seen);
        const auto boxes = dialog.findChildren<QComboBox*>();
        boxes[1]->setCurrentIndex(boxes[1]->count() - 1); // a bottle that is entered with it
        letSettle();
        seen(dialog, QStringLiteral("mix-new-bottle"));
        showForm(dialog, QStringLiteral("mix-new-bottle"), seen);
    }
    {
        RunDialog dialog(door, &developer);
        showForm(dialog, QStringLiteral("run"), seen);
    }
    for (const HappeningKind kind :
         {HappeningKind::TopUp, HappeningKind::DrawOff, HappeningKind::Move,
          HappeningKind::StoodOpen, HappeningKind::StoredAt, HappeningKind::Contaminated,
          HappeningKind::Note, HappeningKind::Discard}) {
        BottleDialog dialog(kind, door, kind == HappeningKind::Discard ? fixer : developer);
        const QString name = QStringLiteral("bottle-%1").arg(static_cast<int>(kind));
        if (kind == HappeningKind::TopUp || kind == HappeningKind::DrawOff ||
            kind == HappeningKind::StoodOpen)
            showForm(dialog, name, seen);
        else
            show(dialog, name, seen);
    }
    for (const Bottle& bottle : {developer, fixer}) {
        BottleDialog dialog(testsOf(bottle.batch.solution->role), door, bottle);
        showForm(dialog,
                 QStringLiteral("test-%1").arg(static_cast<int>(bottle.batch.solution->role)),
                 seen);
    }
    {
        DecantDialog dialog(door, developer);
        show(dialog, QStringLiteral("decant"), seen);
    }
    {
        ExchangeDialog dialog(door, fixer);
        show(dialog, QStringLiteral("exchange"), seen);
    }
    {
        ChartTableDialog dialog(filmTimesChart(developer.batch, developer.assessment, {},
                                               chemistry::Celsius(20), door.wording()));
        show(dialog, QStringLiteral("chart-table"), seen);
    }
    {
        HistoryDialog dialog(door, developer);
        show(dialog, QStringLiteral("history"), seen);
    }
    {
        LabelsDialog dialog(door, {});
        show(dialog, QStringLiteral("labels"), seen);
        dialog.sheet()->setCurrentIndex(dialog.sheet()->count() - 1);
        letSettle();
        seen(dialog, QStringLiteral("labels-sheet"));
    }
    {
        ForgottenDialog dialog(door, developer.batch.id);
        show(dialog, QStringLiteral("forgotten"), seen);
        for (int kind = 1; kind < kHappeningKinds; ++kind) {
            dialog.setKind(static_cast<HappeningKind>(kind));
            letSettle();
            seen(dialog, QStringLiteral("forgotten-%1").arg(kind));
        }
    }
    const auto events = door.events(developer.batch.id);
    if (events && !events->empty()) {
        TakeBackDialog dialog(door, QStringLiteral("1 × 135-36"), {},
                              {{events->back().id, developer.batch.id}}, false);
        show(dialog, QStringLiteral("take-back"), seen);
    }
    seeCorrections(door, seen);
}

void seeCupboardDeeds(Door& door, const SeenScreen& seen)
{
    const auto state = door.cupboard();
    if (!state || state->items.empty() || state->cans.empty() || state->works.empty())
        return;
    {
        AddItemDialog dialog(door, *state);
        showForm(dialog, QStringLiteral("cupboard-add"), seen);
    }
    for (const ShelvedKind kind :
         {ShelvedKind::Concentrate, ShelvedKind::Chemical, ShelvedKind::Supply}) {
        AddItemDialog dialog(door, *state);
        dialog.item()->setKind(kind);
        show(dialog, QStringLiteral("cupboard-add-%1").arg(static_cast<int>(kind)), seen);
    }
    {
        AddItemDialog dialog(door, *state, state->items.front());
        show(dialog, QStringLiteral("cupboard-edit"), seen);
    }
    for (const CupboardAction action :
         {CupboardAction::Open, CupboardAction::Take, CupboardAction::Count,
          CupboardAction::ThrowAway, CupboardAction::Withdraw}) {
        ItemDeedDialog dialog(action, door, {state->items[0], state->items[1]});
        show(dialog, QStringLiteral("cupboard-deed-%1").arg(static_cast<int>(action)), seen);
    }
    CodeDialog code(door, *state, state->items.front());
    show(code, QStringLiteral("cupboard-code"), seen);
    CanDialog can(door, {});
    showForm(can, QStringLiteral("cupboard-can"), seen);
    PourInDialog pour(door, state->cans.front());
    showForm(pour, QStringLiteral("cupboard-pour-in"), seen);
    HandOverDialog over(door, state->cans.front());
    showForm(over, QStringLiteral("cupboard-hand-over"), seen);
    WorkDialog work(door, {});
    showForm(work, QStringLiteral("cupboard-work"), seen);
    WorkDialog anew(door, state->works.front());
    show(anew, QStringLiteral("cupboard-work-edit"), seen);
    OfferedWork offered{.work = state->works.front()};
    offered.known = offered.likely = true;
    OfferedWork choir = offered;
    choir.work.name = "Choir of the harbour church, rehearsal for the concert in the old hall";
    choir.work.films.reset();
    choir.known = choir.likely = false;
    OfferedWorkDialog offers(door, {offered, choir},
                             notReadText({{.code = ErrorCode::NotSuitable, .subject = "Regatta"}},
                                         door.wording().locale));
    show(offers, QStringLiteral("cupboard-calendar-read"), seen);
    CalendarDialog calendar(door.wording(), cupboard::everyDateKind(),
                            QStringLiteral("/media/darkroom/calendars/harbour.ics"));
    show(calendar, QStringLiteral("cupboard-calendar"), seen);
}

void seeFilms(Door& door, const SeenScreen& seen)
{
    const auto marked = door.filmsMarked();
    if (!marked || marked->empty())
        return;
    const ledger::FilmTrace& film = marked->front();
    const ledger::Batch& batch = film.baths.front().before.batch;
    const QString id = QString::fromStdString(film.film.id);
    FilmsDialog list(door, QString::fromStdString(batch.id), QString::fromStdString(batch.name));
    show(list, QStringLiteral("films"), seen);
    FilmCard card(door, id);
    show(card, QStringLiteral("film"), seen);
    CompareDialog compare(door, id);
    show(compare, QStringLiteral("compare"), seen);
}

void seeEditors(Door& door, const SeenScreen& seen)
{
    const formulary::Formulary& formulary = *door.formulary();
    const auto developer = formulary.solution("starter-mq-borax");
    SolutionEditor solution(SolutionEditor::Purpose::Edit, *developer, door, door.wording());
    show(solution, QStringLiteral("solution-editor"), seen);
    VesselEditor vessel(door, door.wording());
    show(vessel, QStringLiteral("vessel-editor"), seen);
    VesselEditor anew(*formulary.currentVessels().front(), door, door.wording());
    show(anew, QStringLiteral("vessel-editor-edit"), seen);
    const auto& figures = formulary.notebook().all();
    TimeEditor time(figures.empty() ? formulary::DevelopmentFigure{} : *figures.front(), formulary,
                    door, door.wording());
    show(time, QStringLiteral("time-editor"), seen);
    TankDialog tank({{}, chemistry::Millilitres(600), {}}, door.wording());
    show(tank, QStringLiteral("tank"), seen);
    TemplateDialog sheet(ledger::usualTemplates().front(), door.wording());
    show(sheet, QStringLiteral("template"), seen);
}

void seeBookDialogs(Door& door, const SeenScreen& seen)
{
    const chemistry::Instant now = door.now();
    {
        CopiesView view;
        view.book = QStringLiteral("home.ullage");
        view.places = {kPlace, kStick};
        view.open = true;
        view.now = now;
        view.standing.lastGood = now;
        view.standing.failure =
            Error{.code = ErrorCode::StoreFailed, .text = "database or disk is full (13)"};
        view.standing.secondFailure =
            Error{.code = ErrorCode::StoreFailed, .text = "/media/stick/darkroom: no such folder"};
        for (int day = 0; day < 24; ++day)
            view.copies.push_back({(day % 3 == 2 ? kStick : kPlace) + "/home.ullage",
                                   now - 24h * day * (1 + day / 7), 1412 - 9 * day, "id",
                                   day == 4   ? store::CopyState::Faulty
                                   : day == 9 ? store::CopyState::Unreadable
                                              : store::CopyState::Sound});
        CopiesDialog dialog(door.wording());
        dialog.setView(view);
        show(dialog, QStringLiteral("copies"), seen);
    }
    const Error fault{.code = ErrorCode::UnknownId,
                      .field = "solution",
                      .text = "starter-mq-borax",
                      .subject = "Dev 14"};
    store::BookCheck check;
    check.entries = 1264;
    check.batches = 31;
    check.findings = {fault, fault, fault};
    FindingsDialog findings(check, now, door.wording());
    show(findings, QStringLiteral("findings"), seen);
    store::Salvaged done;
    done.entries = 1247;
    done.fromCopy = 12;
    done.missing = {{44, 44, "event", "3c1b7c61-61a8-47ed-8d5c-5d5f0f5d8a4e"}, {120, 133, {}, {}}};
    done.faults = {fault};
    SalvageDialog salvage(done, kPlace + "/home-salvaged.ullage", now, door.wording());
    show(salvage, QStringLiteral("salvage"), seen);
    AboutDialog about;
    show(about, QStringLiteral("about"), seen);
    CautionsDialog cautions;
    show(cautions, QStringLiteral("cautions"), seen);
}

// A stranger's sheet: a solution that is not known, a cell that is refused, a day that can be two.
void seeSheet(const Session& session, const Door& door, const SeenScreen& seen)
{
    const QByteArray sheet =
        "Harbour darkroom;;;;;\n"
        "Bottle;Recipe;Volume (l);Mixed;Films done;Notes\n"
        "Dev 21;MQ borax developer, stock;1,0;3/4/26;6;\"second row, on the left\"\n"
        "Dev 22;our soft one;0,75;5/4/26;;\n"
        "Fix 14;Acid fixer;a lot;6/4/26;11;\n";
    auto store = store::SqlStore::open(session.path());
    auto book = ledger::Book::open(
        **store, [&] { return session.now(); }, [&] { return session.newId(); });
    const auto judged = judgeSheet(sheet, {}, {}, **book, **store, door.wording());
    SheetDialog dialog(QStringLiteral("pencil records.csv"), nullptr);
    dialog.setView(judged->view);
    show(dialog, QStringLiteral("sheet-reading"), seen);
    dialog.setStep(SheetDialog::Step::Columns);
    show(dialog, QStringLiteral("sheet-columns"), seen);
    dialog.setStep(SheetDialog::Step::Coming);
    show(dialog, QStringLiteral("sheet-coming"), seen);
}

QString said(const char* context, const char* words)
{
    return QCoreApplication::translate(context, words);
}

void seeQuestions(Door& door, const SeenScreen& seen)
{
    const auto now = door.now();
    const store::Copy copy{kPlace + "/home.ullage", now - 26h, 1264, "id", store::CopyState::Sound};
    ChoiceDialog choice(
        said("MissingBook", "Where is the book?"),
        said("MissingBook", "The book %1 is not where it was: it was moved, renamed or deleted, "
                            "or its drive is not connected.")
            .arg(QStringLiteral("home.ullage")),
        {said("MissingBook", "Choose the book…"),
         said("MissingBook", "Restore the copy of %1").arg(copyText(copy, now, door.wording())),
         said("MissingBook", "Start again with an empty book")});
    show(choice, QStringLiteral("choice"), seen);
    choice.close();
    constexpr auto kCopies = "ullage::app::BookCopies";
    seeAsked(QStringLiteral("question"), seen, [&] {
        prompts().confirm(
            nullptr,
            {.title = said(kCopies, "Restore a copy"),
             .text = said(kCopies, "Put this copy in the place of %1?").arg("home.ullage"),
             .detail = said(kCopies, "The copy: %1.").arg(copyText(copy, now, door.wording())) +
                       u'\n' +
                       said(kCopies, "The book as it is now is kept beside it under another name."),
             .yes = said(kCopies, "Restore"),
             .danger = true});
    });
    seeAsked(QStringLiteral("told"), seen, [&] {
        prompts().fail(nullptr, said("ullage::app::LabelsDialog", "The labels were not saved"),
                       errorSentence({.code = ErrorCode::FileFailed,
                                      .text = "/media/stick/labels.pdf: no such folder"},
                                     door.wording()),
                       {});
    });
}

} // namespace

void seeDialogs(Session& session, Preferences& preferences, const SeenScreen& seen)
{
    SessionDoor door(session, preferences);
    seeDeeds(door, seen);
    seeCupboardDeeds(door, seen);
    seeFilms(door, seen);
    seeEditors(door, seen);
    seeBookDialogs(door, seen);
    seeSheet(session, door, seen);
    seeQuestions(door, seen);
}

} // namespace ullage::app
