package bayproof.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/** Ctrl-C during long work: the work stops at its next step, and the program ends once what is done has been printed. */
final class Interruption {
    private static final int MOST_SECONDS = 30;

    /** What goes on at this moment; null outside of such work. */
    private static volatile Interruption current;

    private final AtomicBoolean wanted = new AtomicBoolean();
    private final CountDownLatch printed = new CountDownLatch(1);

    private Interruption() {
    }

    /** Work that looks again and again whether it is wanted to stop. */
    @FunctionalInterface
    interface Work<T> {
        T run(AtomicBoolean stop) throws Exception;
    }

    /** Does work that an interrupt ends; one that comes before its end lets the program live until {@link #printed()}. */
    static <T> T guarding(Work<T> work) throws Exception {
        Interruption interruption = new Interruption();
        current = interruption;
        Thread hook = new Thread(interruption::await, "interruption");
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            return work.run(interruption.wanted);
        } finally {
            if (!interruption.wanted.get()) {
                current = null;
                interruption.printed.countDown();
            }
        }
    }

    private void await() {
        wanted.set(current == this);
        try {
            if (wanted.get() && !printed.await(MOST_SECONDS, TimeUnit.SECONDS)) {
                System.err.println("bayproof: stopped before anything could be printed");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Everything has been printed. */
    static void printed() {
        Interruption interruption = current;
        if (interruption != null) {
            interruption.printed.countDown();
        }
    }
}
