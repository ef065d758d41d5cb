package bayproof.command;

/** One line on a terminal that tells how far long work has come; anywhere else nothing. */
final class ProgressBar {
    private static final int WIDTH = 30;
    private static final long NANOS_BETWEEN = 100_000_000L;

    private final boolean shown;
    private long last;

    ProgressBar(boolean shown) {
        this.shown = shown;
    }

    void show(int done, int of, int held) {
        long now = System.nanoTime();
        if (!shown || done < of && now - last < NANOS_BETWEEN) {
            return;
        }
        last = now;
        System.err.print("\r" + text(done, of, held));
        System.err.flush();
    }

    static String text(int done, int of, int held) {
        int full = of == 0 ? WIDTH : (int) ((long) WIDTH * done / of);
        return "[" + "=".repeat(full) + " ".repeat(WIDTH - full) + "] " + done + " of " + of + " jobs, " + held + " may not go ";
    }

    /** Takes the line away, so that the page begins where it stood. */
    void end() {
        if (shown) {
            System.err.print("\r" + " ".repeat(WIDTH + 45) + "\r");
            System.err.flush();
        }
    }
}
