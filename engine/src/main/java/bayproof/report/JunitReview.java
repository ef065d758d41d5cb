package bayproof.report;

import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.read.Waiver;
import bayproof.review.Remedy;
import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Everything that is due as test results in the XML that build servers read: a check that counts against the job is a
 * failure, one that is waived or too light to count is skipped.
 */
public final class JunitReview {
    private static final int FIRST_PRINTABLE = 0x20;

    private final Standing standing;
    private final Places places;
    private final XMLStreamWriter xml;

    private JunitReview(Standing standing, Places places, XMLStreamWriter xml) {
        this.standing = standing;
        this.places = places;
        this.xml = xml;
    }

    /**
     * The document, the same bytes for the same input.
     *
     * @param plan the plan's file as the user gave it
     */
    public static String of(Standing standing, String plan) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
            new JunitReview(standing, new Places(plan), xml).write();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("the results cannot be written", e);
        }
        return text.append('\n').toString();
    }

    private void write() throws XMLStreamException {
        List<Verdict> due = standing.due();
        long failures = due.stream().filter(standing::counts).count();
        long skipped = due.stream().filter(verdict -> verdict.outcome() != Outcome.HOLDS && !standing.counts(verdict)).count();
        xml.writeStartDocument("UTF-8", "1.0");
        line(0);
        xml.writeStartElement("testsuites");
        line(1);
        xml.writeStartElement("testsuite");
        attribute("name", "bayproof " + standing.evaluation().job().plan().job().tag().orElse("not given") + ", up to " + standing.gate().word());
        attribute("tests", String.valueOf(due.size()));
        attribute("failures", String.valueOf(failures));
        attribute("errors", "0");
        attribute("skipped", String.valueOf(skipped));
        for (Verdict verdict : due) {
            line(2);
            check(verdict);
        }
        line(1);
        xml.writeEndElement();
        line(0);
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void check(Verdict verdict) throws XMLStreamException {
        if (verdict.outcome() == Outcome.HOLDS) {
            xml.writeEmptyElement("testcase");
            names(verdict);
            return;
        }
        xml.writeStartElement("testcase");
        names(verdict);
        Waiver waiver = standing.waiver(verdict);
        if (standing.counts(verdict)) {
            Remedy remedy = standing.remedy(verdict);
            xml.writeStartElement("failure");
            attribute("type", verdict.weight().name() + (verdict.outcome() == Outcome.UNSHOWN ? ", not shown" : ""));
            attribute("message", Plain.sentence(verdict.because()));
            xml.writeCharacters(legal(places.line(verdict.at()) + (remedy == null ? "" : ": " + Plain.sentence(remedy.say()))));
            xml.writeEndElement();
        } else {
            xml.writeEmptyElement("skipped");
            attribute("message", waiver == null ? "lighter than what counts: " + verdict.because() : "waived " + WaiverText.brief(waiver, ""));
        }
        xml.writeEndElement();
    }

    private void names(Verdict verdict) throws XMLStreamException {
        attribute("classname", verdict.rule().topic() + "." + verdict.rule().id());
        attribute("name", verdict.subject());
    }

    private void attribute(String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, legal(value));
    }

    private void line(int depth) throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(depth));
    }

    /** What XML 1.0 cannot hold even when escaped is left out. */
    private static String legal(String text) {
        StringBuilder legal = new StringBuilder();
        Plain.text(text).codePoints().filter(c -> c >= FIRST_PRINTABLE && (c < 0xD800 || c > 0xDFFF) && c != 0xFFFE && c != 0xFFFF).forEach(legal::appendCodePoint);
        return legal.toString();
    }
}
