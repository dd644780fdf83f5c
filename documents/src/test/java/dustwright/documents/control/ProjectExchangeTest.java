package dustwright.documents.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * The project file has the structure of the exchange format as far as we use it, and read back it is the very block that is executed and compared with the
 * controller. Not shown: that any programming system takes it; none is at hand.
 */
class ProjectExchangeTest {
    private static final String PROJECT = "http://www.plcopen.org/xml/tc6_0201";

    @ParameterizedTest
    @ValueSource(ints = {0, 2, 31, 63, 64, 128, 190})
    void the_file_has_the_structure_of_the_format(int variant) throws Exception {
        schema().newValidator()
                .validate(new StreamSource(new StringReader(ProjectExchange.of(
                        DefaultSequence.of("Bag & drum <one> \"two\"", Options.numbered(variant))))));
    }

    @Test
    void a_file_that_lacks_a_part_is_found_wanting() throws Exception {
        String whole = ProjectExchange.of(DefaultSequence.of("bag", Options.USUAL));
        for (String part : new String[] {
            "<dataTypes/>", " pouType=\"functionBlock\"", "<BOOL/>", " creationDateTime=\"1970-01-01T00:00:00\""
        }) {
            assertThat(whole).contains(part);
            String cut = whole.replace(part, "");
            Schema schema = schema();
            assertThatThrownBy(() -> schema.newValidator().validate(new StreamSource(new StringReader(cut))))
                    .isInstanceOf(SAXException.class);
        }
    }

    /** Declarations and body taken from the file again, written as text, run as the exported text does: they are that text but for remarks. */
    @ParameterizedTest
    @ValueSource(ints = {0, 31, 190})
    void read_back_it_is_the_block_that_is_executed(int variant) throws Exception {
        Sequence sequence = DefaultSequence.of("bag *) or < drum", Options.numbered(variant));
        Element pou =
                (Element) elements(root(ProjectExchange.of(sequence)), "pou").item(0);
        StringBuilder text = new StringBuilder("FUNCTION_BLOCK " + pou.getAttribute("name") + "\n");
        NodeList lists = ((Element) elements(pou, "interface").item(0)).getChildNodes();
        for (int l = 0; l < lists.getLength(); l++) {
            if (lists.item(l) instanceof Element list) {
                declared(list, text);
            }
        }
        text.append(((Element) elements(pou, "ST").item(0)).getTextContent().strip())
                .append("\nEND_FUNCTION_BLOCK\n");

        assertThat(bare(text.toString())).isEqualTo(bare(StructuredText.of(sequence)));
    }

    @Test
    void the_same_sequence_gives_the_same_bytes() throws Exception {
        Sequence sequence = DefaultSequence.of("bag", Options.USUAL);
        assertThat(ProjectExchange.of(sequence)).isEqualTo(ProjectExchange.of(sequence));
    }

    private static void declared(Element list, StringBuilder text) {
        text.append(
                switch (list.getLocalName()) {
                    case "inputVars" -> "VAR_INPUT";
                    case "outputVars" -> "VAR_OUTPUT";
                    default -> "VAR";
                });
        text.append(list.getAttribute("retain").equals("true") ? " RETAIN\n" : "\n");
        NodeList variables = elements(list, "variable");
        for (int v = 0; v < variables.getLength(); v++) {
            Element variable = (Element) variables.item(v);
            Element type = (Element) elements(variable, "type").item(0);
            Element is = (Element) type.getElementsByTagName("*").item(0);
            text.append(variable.getAttribute("name"))
                    .append(" : ")
                    .append(is.getLocalName().equals("derived") ? is.getAttribute("name") : is.getLocalName())
                    .append(";\n");
        }
        text.append("END_VAR\n");
    }

    private static String bare(String text) {
        return text.replaceAll("(?s)\\(\\*.*?\\*\\)", "")
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static Element root(String text) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
    }

    private static NodeList elements(Element in, String name) {
        return in.getElementsByTagNameNS(PROJECT, name);
    }

    private static Schema schema() throws SAXException {
        return SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
                .newSchema(
                        Objects.requireNonNull(ProjectExchangeTest.class.getResource("/control/project-exchange.xsd")));
    }
}
