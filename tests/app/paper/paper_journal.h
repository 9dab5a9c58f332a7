// A book of two months, small enough to be added up by hand.
#pragma once

#include <QByteArray>

namespace ullage::app::testing
{

/// In November: five films developed (two by Ada, three by Ben; four more were taken back), the
/// fixer mixed from a packet of 3.00 USD and discarded, two packets bought for 9.80 and 0.25 EUR
/// and that of the fixer, a bag of sulfite for 2.00 EUR of which all was taken, and one without a
/// price. One film and one packet are December's.
inline const QByteArray kTwoMonths =
    R"({"type":"book","format":"ullage-journal","version":2})"
    "\n"
    R"({"type":"solution","id":"mq","name":"MQ borax developer","role":"developer",)"
    R"("capacity_films_per_litre":20,"wear":{"rule":"per-film","percent":10},)"
    R"("keeping":{"full_days":182.625,"half_days":60.875}})"
    "\n"
    R"({"type":"solution","id":"fix","name":"Acid fixer","role":"fixer",)"
    R"("capacity_films_per_litre":20,"wear":{"rule":"none"},"silver_g_per_film":0.15})"
    "\n"
    R"({"type":"vessel","id":"b1","name":"Amber 1","capacity_ml":1030,"material":"glass",)"
    R"("squeezed":false})"
    "\n"
    R"({"type":"vessel","id":"b2","name":"Amber 2","capacity_ml":1030,"material":"glass",)"
    R"("squeezed":false})"
    "\n"
    R"({"type":"packet","id":"p1","solution":"mq","makes_ml":1000,"bought":"2026-11-03",)"
    R"("cost":"9.80","currency":"EUR"})"
    "\n"
    R"({"type":"packet","id":"p2","solution":"mq","makes_ml":1000,"bought":"2026-11-10",)"
    R"("cost":"0.25","currency":"EUR"})"
    "\n"
    R"({"type":"packet","id":"p3","solution":"fix","makes_ml":1000,"bought":"2026-11-11",)"
    R"("cost":"3.00","currency":"USD"})"
    "\n"
    R"({"type":"packet","id":"p4","solution":"fix","makes_ml":1000,"bought":"2026-12-01",)"
    R"("cost":"5.00","currency":"EUR"})"
    "\n"
    R"({"type":"chemical","id":"c1","name":"sulfite","grams":100,"bought":"2026-11-12",)"
    R"("cost":"2.00","currency":"EUR"})"
    "\n"
    R"({"type":"supply","id":"s1","name":"gloves","unit":"pairs","amount":50,"bought":"2026-11-12"})"
    "\n"
    R"({"type":"event","id":"t1","item":"c1","kind":"taken","at":"2026-11-13T10:00:00Z",)"
    R"("amount":100})"
    "\n"
    R"({"type":"event","id":"e1","batch":"dev-1","kind":"mixed","at":"2026-10-30T10:00:00Z",)"
    R"("solution":"mq","vessel":"b1","volume_ml":1000,"name":"Dev 1"})"
    "\n"
    R"({"type":"event","id":"e2","batch":"fix-1","kind":"mixed","at":"2026-11-02T10:00:00Z",)"
    R"("solution":"fix","vessel":"b2","volume_ml":1000,"name":"Fix 1","packet":"p3"})"
    "\n"
    R"({"type":"event","id":"e3","batch":"dev-1","kind":"processed","at":"2026-11-05T12:00:00Z",)"
    R"("films":[{"format":"135-36","count":2}],"run":"r1","by":"Ada"})"
    "\n"
    R"({"type":"event","id":"e4","batch":"fix-1","kind":"processed","at":"2026-11-05T12:00:00Z",)"
    R"("films":[{"format":"135-36","count":2}],"run":"r1","by":"Ada"})"
    "\n"
    R"({"type":"event","id":"e5","batch":"dev-1","kind":"processed","at":"2026-11-20T12:00:00Z",)"
    R"("films":[{"format":"135-36","count":3}],"run":"r2","by":"Ben"})"
    "\n"
    R"({"type":"event","id":"e6","batch":"fix-1","kind":"processed","at":"2026-11-20T12:00:00Z",)"
    R"("films":[{"format":"135-36","count":3}],"run":"r2","by":"Ben"})"
    "\n"
    R"({"type":"event","id":"e7","batch":"dev-1","kind":"processed","at":"2026-11-21T12:00:00Z",)"
    R"("films":[{"format":"135-36","count":4}],"run":"r3","by":"Ben"})"
    "\n"
    R"({"type":"event","id":"e8","kind":"voided","at":"2026-11-21T13:00:00Z","voids":"e7",)"
    R"("why":"wrong bottle"})"
    "\n"
    R"({"type":"event","id":"e9","batch":"fix-1","kind":"discarded","at":"2026-11-28T12:00:00Z",)"
    R"("how":"collected"})"
    "\n"
    R"({"type":"event","id":"e10","batch":"dev-1","kind":"processed","at":"2026-12-02T12:00:00Z",)"
    R"("films":[{"format":"135-36","count":1}],"run":"r4","by":"Ada"})"
    "\n";

} // namespace ullage::app::testing
