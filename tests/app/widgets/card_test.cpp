#include "app/widgets/factor_rows.h"
#include "app/widgets/flow_layout.h"
#include "tests/app/scripted_prompts.h"

#include <QPushButton>

#include <gtest/gtest.h>

using namespace ullage::app;

TEST(FactorRows, AreReadAloudAsSentences)
{
    FactorRows rows;
    rows.setRows({{QStringLiteral("Wear"), QStringLiteral("× 1.32")},
                  {QStringLiteral("Develop"), QStringLiteral("12:35"), true}});
    EXPECT_EQ(rows.accessibleName().toStdString(), "Wear: × 1.32, Develop: 12:35");
    EXPECT_EQ(rows.sizeHint().height(), 54);
}

TEST(FlowLayout, BeginsANewRowWhereTheWidthEnds)
{
    QWidget window;
    auto* flow = new FlowLayout(&window, 6);
    QList<QWidget*> boxes;
    for (int i = 0; i < 4; ++i) {
        auto* box = new QWidget;
        box->setFixedSize(100, 30);
        flow->addWidget(box);
        boxes << box;
    }
    EXPECT_EQ(flow->heightForWidth(1000), 30);
    EXPECT_EQ(flow->heightForWidth(206), 66);
    EXPECT_EQ(flow->heightForWidth(100), 138);
    window.resize(206, 200);
    window.show();
    EXPECT_EQ(boxes[1]->pos(), QPoint(106, 0));
    EXPECT_EQ(boxes[2]->pos(), QPoint(0, 36));
}

TEST(Prompts, AnswersComeFromTheQueueInOrder)
{
    ScriptedPrompts script;
    const PromptsInForce inForce(script);
    script.answer(true);
    script.answer(QStringLiteral("season.jsonl"));
    script.answerWay(2);
    EXPECT_TRUE(prompts().confirm(
        nullptr, {.title = "Discard", .text = "Discard Dev 13?", .yes = "Discard"}));
    EXPECT_EQ(prompts().openFile(nullptr, "Import", "*.jsonl"), QStringLiteral("season.jsonl"));
    EXPECT_EQ(prompts().choose(nullptr, "How", "How?", {"a", "b", "c"}), 2);
    EXPECT_FALSE(prompts().confirm(nullptr, {.title = "Again", .text = "?"})) << "no answer is no";
    EXPECT_FALSE(prompts().saveFile(nullptr, "Save", "x", "*"));
    EXPECT_EQ(script.asked().first(), QStringLiteral("Discard|Discard Dev 13?"));
    EXPECT_EQ(script.asked().size(), 5);
}
