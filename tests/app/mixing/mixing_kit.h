// The guide to mixing on a door that keeps what is done by it.
#pragma once

#include "app/mixing/dissolve_step.h"
#include "app/mixing/mixing_page.h"
#include "tests/app/closed_door.h"
#include "tests/app/formulary/starter.h"
#include "tests/app/words/sample_batches.h"

#include <QPushButton>
#include <QTest>

#include <utility>
#include <vector>

namespace ullage::app
{

struct MixingDesk {
    formulary::Formulary formulary = sample::starterFormulary();
    chemistry::Instant clock = sample::day(0);
    std::vector<std::pair<ledger::NewBatch, ledger::When>> mixed;
    bool refuses = false;
    std::vector<ledger::Packet> packets;
    ledger::CupboardState state;

    // What is done by it is kept above.
    struct KeepingDoor : ClosedDoor {
        MixingDesk& desk;

        explicit KeepingDoor(MixingDesk& keeps) : desk(keeps) {}
        [[nodiscard]] chemistry::Instant now() const override { return desk.clock; }
        std::vector<ledger::Packet> packetsAtHand() override { return desk.packets; }
        Result<ledger::CupboardState> cupboard() override { return desk.state; }
        Result<std::vector<std::string>> mixAll(const std::vector<ledger::NewBatch>& batches,
                                                ledger::When when) override
        {
            if (desk.refuses)
                return refuse({.code = ErrorCode::StoreFailed, .text = "disk full"});
            std::vector<std::string> ids;
            for (const ledger::NewBatch& batch : batches) {
                desk.mixed.emplace_back(batch, when);
                ids.push_back("batch-" + std::to_string(desk.mixed.size()));
            }
            return ids;
        }
    };
    KeepingDoor door{*this};
    MixingPage page{door, {}};

    explicit MixingDesk(std::vector<ledger::Packet> inCupboard = {})
        : packets(std::move(inCupboard))
    {
        page.begin(formulary, formulary.vessels(), {QStringLiteral("Dev 14")});
        page.resize(1100, 760);
        page.show();
    }

    void press(int times = 1)
    {
        for (int i = 0; i < times; ++i)
            QTest::mouseClick(page.nextButton(), Qt::LeftButton);
    }
    void wait(int seconds)
    {
        clock += std::chrono::seconds(seconds);
        page.dissolve()->tick();
    }
};

} // namespace ullage::app
