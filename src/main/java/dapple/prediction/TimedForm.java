package dapple.prediction;

/** A form that asks when a lamp burns. */
interface TimedForm extends RigForm {
    TimerFields timerFields();
}
