#include "app/bench/run_keeper.h"

#include "app/bench/run_codec.h"
#include "tests/app/bench/bench_kit.h"

#include <QFile>
#include <QTemporaryDir>

namespace ullage::app
{

namespace
{

ledger::RunState stateSavedAt(int second)
{
    ledger::RunState state;
    state.savedAt = chemistry::Instant(std::chrono::seconds(second));
    return state;
}

struct Keeper {
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("home.ullage.run"));
    std::vector<Result<void>> written;
    std::unique_ptr<RunKeeper> keeper = std::make_unique<RunKeeper>(
        path, [this](const Result<void>& done) { written.push_back(done); });
};

} // namespace

TEST(RunKeeper, TheLastHandedOverIsOnDiskWhenItGoes)
{
    Keeper at;
    for (int second = 1; second <= 50; ++second)
        at.keeper->save(stateSavedAt(second));
    at.keeper.reset();
    QFile file(at.path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), runToJson(stateSavedAt(50)));
}

TEST(RunKeeper, TellsThatItIsWrittenAndThatItIsNot)
{
    Keeper at;
    at.keeper->save(stateSavedAt(1));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !at.written.empty(); }));
    EXPECT_TRUE(at.written.back());

    std::vector<Result<void>> nowhere;
    RunKeeper lost(at.folder.filePath(QStringLiteral("no/such/folder/run")),
                   [&](const Result<void>& done) { nowhere.push_back(done); });
    lost.save(stateSavedAt(1));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !nowhere.empty(); }));
    EXPECT_FALSE(nowhere.back());
    EXPECT_FALSE(lost.saveNow(stateSavedAt(2)));
}

TEST(RunKeeper, WhatIsForgottenDoesNotComeBack)
{
    Keeper at;
    at.keeper->save(stateSavedAt(1));
    at.keeper->save(stateSavedAt(2));
    EXPECT_TRUE(at.keeper->remove());
    at.keeper.reset();
    EXPECT_FALSE(QFile::exists(at.path));
}

} // namespace ullage::app
