// Not compiled: the units check must notice this line.
const double minutes = time.value() / 60;
