package bayproof.command;

import bayproof.read.UnusableInput;
import bayproof.report.MistakesPage;
import bayproof.report.Paper;
import bayproof.report.Plain;
import bayproof.report.RuleBaseDate;
import bayproof.units.UnitSystem;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Entry point: reads the command line, runs a command, prints what it says and ends with its status. */
public final class Main {
    private Main() {
    }

    public static void main(String[] arguments) {
        Reply reply = run(arguments);
        // Both streams are written as bytes: the text is UTF-8 whatever the machine's language is.
        boolean written = write(FileDescriptor.err, reply.err()) & write(FileDescriptor.out, reply.out());
        Interruption.printed();
        System.exit(written ? reply.status() : Reply.FAULT);
    }

    private static boolean write(FileDescriptor stream, String text) {
        if (text.isEmpty()) {
            return true;
        }
        try (OutputStream out = new FileOutputStream(stream)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
            return true;
        } catch (IOException e) {
            // A reader that has seen enough and closed its end is no fault.
            return "Broken pipe".equals(e.getMessage());
        }
    }

    /** Runs a command line and never throws. */
    static Reply run(String... arguments) {
        try {
            return dispatch(arguments);
        } catch (WrongUse e) {
            return new Reply(Reply.UNUSABLE, "", wrongUse(e));
        } catch (UnusableInput e) {
            return new Reply(Reply.UNUSABLE, "", MistakesPage.of(e.problems()).text());
        } catch (Throwable e) {
            // Whatever goes wrong here must never look like a verdict.
            return new Reply(Reply.FAULT, "", fault(e));
        }
    }

    private static Reply dispatch(String[] arguments) throws WrongUse, UnusableInput {
        Order order = Order.plain(arguments);
        if (order == null) {
            Object read = new Usage().read(arguments);
            if (read instanceof Reply reply) {
                return reply;
            }
            order = (Order) read;
        }
        try (UnitSystem.Scope units = units(order).open()) {
            return switch (order.command()) {
                case REVIEW -> Review.run(order);
                case SHEET -> BenchSheet.run(order);
                case HANDOVER -> Handover.run(order);
                case REFIT -> RefitJob.run(order);
                case WHY -> Why.run(order);
                case FIGURE -> ByHand.run(order);
                case NEW -> New.run(order);
                case COMPLETION -> Completion.run(order);
            };
        }
    }

    /** The units to print in. What other programs read does not depend on what somebody likes to read. */
    private static UnitSystem units(Order order) throws WrongUse {
        String word = Review.oneOf("--units", order.word("--units", UnitSystem.METRIC.word()), UnitSystem.words());
        return order.word("--as", "text").equals("json") ? UnitSystem.METRIC : UnitSystem.of(word);
    }

    /** Name of the tool and of its rule base with its date. */
    static String version() {
        RuleBaseDate base = RuleBaseDate.built();
        String tool = Main.class.getPackage().getImplementationVersion();
        return "bayproof " + (tool == null ? "(not packed)" : tool) + ", rule base " + base.version() + " of " + base.date() + "\n";
    }

    private static String wrongUse(WrongUse e) {
        Paper page = new Paper().hanging("bayproof: ", 4, e.getMessage());
        return e.fix().isEmpty() ? page.text() : page.hanging("    ", e.fix()).text();
    }

    private static String fault(Throwable thrown) {
        Throwable e = thrown;
        while (e instanceof LinkageError && e.getCause() != null) {
            e = e.getCause();
        }
        String what = e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ": " + e.getMessage());
        return new Paper().hanging("bayproof: ", 4, "a fault of ours, not of your plan: " + Plain.cut(Plain.text(what), 400)
                + place(e) + " Nothing was judged. Please report it together with the plan.").text();
    }

    private static String place(Throwable e) {
        for (StackTraceElement frame : e.getStackTrace()) {
            if (frame.getClassName().startsWith("bayproof.")) {
                return " (" + frame.getFileName() + ":" + frame.getLineNumber() + ").";
            }
        }
        return ".";
    }
}
