package dapple.prediction;

/** How a timer's times go over the year. */
enum TimerKind {
    DAILY,
    MONTHLY,
    HOME_DAY
}
