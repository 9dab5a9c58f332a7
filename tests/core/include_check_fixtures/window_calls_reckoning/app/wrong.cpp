// Not compiled: the include check must notice this line.
const auto time = chemistry::baseTime(pairs, temperature, q10);
