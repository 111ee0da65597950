package dapple.light.survey;

import java.util.function.Supplier;

/**
 * Who does the work: as many hands as it has, until its deadline. What is found must not depend on how many hands there
 * are; so each number is worked at by itself, and stores what it finds at its own index.
 */
public interface Crew {
    /**
     * Does something for each of the numbers from 0 to count less one, in any order, and waits for all of it.
     *
     * @param tools makes what one hand keeps to itself, such as {@code field::another}; asked once a hand
     * @throws RuntimeException of the crew's own, when its deadline is over
     */
    <T> void each(int count, Supplier<T> tools, Work<T> work);

    /** Does what cannot be shared out. */
    <T> T alone(Supplier<T> work);

    /** Works at one number. */
    interface Work<T> {
        void at(T tool, int index);
    }

    /**
     * One hand: the thread that asks.
     *
     * @param deadline run before each number; throws when the work is to be given up
     */
    static Crew ofOne(Runnable deadline) {
        return new Crew() {
            @Override
            public <T> void each(int count, Supplier<T> tools, Work<T> work) {
                T tool = tools.get();
                for (int index = 0; index < count; index++) {
                    deadline.run();
                    work.at(tool, index);
                }
            }

            @Override
            public <T> T alone(Supplier<T> work) {
                deadline.run();
                return work.get();
            }
        };
    }
}
