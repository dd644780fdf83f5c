package dustwright.documents.control;

import dustwright.engine.interlock.Sequence;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * The function block as a project file that programming systems exchange: PLCopen TC6 XML 2.01, from which IEC 61131-10 came. It holds one function block, its
 * declarations and its body in Structured Text; no program, no task, no addresses, since those are the controller's.
 */
public final class ProjectExchange {
    private static final String PROJECT = "http://www.plcopen.org/xml/tc6_0201";
    private static final String TEXT = "http://www.w3.org/1999/xhtml";

    /** The format asks for a time of creation; one that never changes keeps the file the same for the same sequence. */
    private static final String NO_TIME = "1970-01-01T00:00:00";

    private final XMLStreamWriter xml;
    private final List<String> open = new ArrayList<>();
    private boolean hasChild;

    private ProjectExchange(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /** The file's text. */
    public static String of(Sequence sequence) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            new ProjectExchange(xml).project(sequence);
            xml.writeEndDocument();
            xml.flush();
        } catch (XMLStreamException fault) {
            throw new IllegalStateException("writing into memory failed", fault);
        }
        return text + "\n";
    }

    private void project(Sequence sequence) throws XMLStreamException {
        start("project", "xmlns", PROJECT);
        empty(
                "fileHeader",
                "companyName",
                "",
                "productName",
                "Dustwright",
                "productVersion",
                "not stated",
                "creationDateTime",
                NO_TIME,
                "contentDescription",
                StructuredText.REVIEW);
        start("contentHeader", "name", sequence.title());
        start("coordinateInfo");
        for (String language : List.of("fbd", "ld", "sfc")) {
            start(language);
            empty("scaling", "x", "1", "y", "1");
            end();
        }
        end();
        end();
        start("types");
        empty("dataTypes");
        start("pous");
        block(sequence);
        end();
        end();
        start("instances");
        empty("configurations");
        end();
        end();
    }

    private void block(Sequence sequence) throws XMLStreamException {
        start("pou", "name", StructuredText.NAME, "pouType", "functionBlock");
        start("interface");
        for (StructuredText.Section section : StructuredText.sections(sequence)) {
            String list = switch (section.kind()) {
                case "VAR_INPUT" -> "inputVars";
                case "VAR_OUTPUT" -> "outputVars";
                default -> "localVars";
            };
            if (section.retained()) {
                start(list, "retain", "true");
            } else {
                start(list);
            }
            for (StructuredText.Variable variable : section.variables()) {
                variable(variable);
            }
            end();
        }
        end();
        start("body");
        start("ST");
        text(StructuredText.body(sequence));
        end();
        end();
        start("documentation");
        text(sequence.title() + ". " + StructuredText.REVIEW);
        end();
        end();
    }

    /** Function blocks are derived types, all others are built in. */
    private void variable(StructuredText.Variable variable) throws XMLStreamException {
        start("variable", "name", variable.name());
        start("type");
        if (variable.type().equals("TON")) {
            empty("derived", "name", "TON");
        } else {
            empty(variable.type());
        }
        end();
        if (!variable.words().isEmpty()) {
            start("documentation");
            text(variable.words());
            end();
        }
        end();
    }

    private void text(String words) throws XMLStreamException {
        line();
        xml.writeStartElement("p");
        xml.writeDefaultNamespace(TEXT);
        xml.writeCharacters(words);
        xml.writeEndElement();
        hasChild = true;
    }

    private void start(String name, String... attributes) throws XMLStreamException {
        line();
        xml.writeStartElement(name);
        attributes(attributes);
        open.add(name);
        hasChild = false;
    }

    private void empty(String name, String... attributes) throws XMLStreamException {
        line();
        xml.writeEmptyElement(name);
        attributes(attributes);
        hasChild = true;
    }

    private void attributes(String... nameValue) throws XMLStreamException {
        for (int i = 0; i < nameValue.length; i += 2) {
            xml.writeAttribute(nameValue[i], nameValue[i + 1]);
        }
    }

    private void end() throws XMLStreamException {
        open.remove(open.size() - 1);
        if (hasChild) {
            line();
        }
        xml.writeEndElement();
        hasChild = true;
    }

    private void line() throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(open.size()));
    }
}
