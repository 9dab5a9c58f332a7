// Not compiled: the units check must notice this line.
const auto left = chemistry::Seconds(days.value() * 86'400.0);
