package dustwright.studio;

import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Position;
import dustwright.plantfile.Fault;
import dustwright.plantfile.PlaceText;
import dustwright.plantfile.PlantEditor;
import dustwright.plantfile.PlantEditor.Written;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The text of a plant under a hand that draws: one edit after the other, each checked, all of them one step in the end. */
final class Pencil {
    private final Path folder;
    private String text;

    Pencil(String text, Path folder) {
        this.text = text;
        this.folder = folder;
    }

    /** What cannot be drawn, with the reason for the reader. */
    static final class Cannot extends RuntimeException {
        private static final long serialVersionUID = 1;

        Cannot(String why) {
            super(why, null, false, false);
        }

        String why() {
            return String.valueOf(getMessage());
        }
    }

    String text() {
        return text;
    }

    /** The plant as drawn so far. */
    Plant plant() {
        Reading reading = PlantReader.read(text, folder);
        if (reading instanceof Reading.Read read) {
            return read.plant();
        }
        throw new Cannot(drawn(((Reading.Faults) reading).faults().get(0)));
    }

    /** What is wrong with a text that was drawn and is not kept: its lines are nobody's. */
    static String drawn(Fault fault) {
        return new Fault(0, 0, fault.path(), fault.message(), fault.expected(), fault.suggestion()).text();
    }

    void move(Skeleton.Node node, Position to) {
        done(PlaceText.moved(text, node.path(), node.at(), to));
    }

    void set(String path, String value) {
        done(PlantEditor.set(text, path, new PlantEditor.Value.Plain(value)));
    }

    /** Puts a list or mapping in the place of one that is there. */
    void setFlow(String path, String flow) {
        done(PlantEditor.set(text, path, new PlantEditor.Value.Flow(flow)));
    }

    void remove(String path) {
        done(PlantEditor.remove(text, path));
    }

    /** Writes a value that is there, or adds it. */
    void put(String path, String key, String value) {
        if (values(path).containsKey(key)) {
            set(path + "." + key, value);
        } else {
            done(PlantEditor.add(text, path, key, new PlantEditor.Value.Plain(value)));
        }
    }

    boolean has(String path) {
        return PlantEditor.onOneLine(text, path).isPresent();
    }

    Pencil copy() {
        return new Pencil(text, folder);
    }

    void takeBack(Pencil before) {
        text = before.text;
    }

    /** Adds a place in space. */
    void add(String mapping, String key, Position at) {
        addFlow(mapping, key, PlaceText.written(text, at));
    }

    /** Adds a mapping of values that are written as they will stand. */
    void add(String mapping, String key, Map<String, String> values) {
        String flow = values.entrySet().stream()
                .map(e -> e.getKey() + ": " + e.getValue())
                .collect(Collectors.joining(", ", "{", "}"));
        addFlow(mapping, key, flow);
    }

    /** Adds a list or mapping that is written as it will stand. */
    void addFlow(String mapping, String key, String flow) {
        done(PlantEditor.add(text, mapping, key, new PlantEditor.Value.Flow(flow)));
    }

    /** Puts a list of corners at a run, or takes it away where there are none. */
    void corners(String run, Collection<Position> corners) {
        String path = "runs." + run;
        boolean there = values(path).containsKey("via");
        if (corners.isEmpty()) {
            if (there) {
                remove(path + ".via");
            }
        } else if (there) {
            setFlow(path + ".via", list(corners));
        } else {
            addFlow(path, "via", list(corners));
        }
    }

    String list(Collection<Position> corners) {
        return corners.stream().map(at -> PlaceText.written(text, at)).collect(Collectors.joining(", ", "[", "]"));
    }

    /** Values at a path as they are written, on one line, by key. */
    Map<String, String> values(String path) {
        Map<String, String> values = new LinkedHashMap<>();
        for (Written written : PlantEditor.values(text, path)) {
            values.put(written.key(), written.onOneLine());
        }
        return values;
    }

    private void done(PlantEditor.Edit edit) {
        if (edit instanceof PlantEditor.Edit.Refused refused) {
            throw new Cannot(refused.why());
        }
        text = ((PlantEditor.Edit.Done) edit).text();
    }

    /** A name nobody has: the next number behind one like it, {@code A4} after {@code A3}. */
    static String next(String like, Collection<String> taken) {
        String stem = like.replaceFirst("[0-9]+$", "");
        String digits = like.substring(stem.length());
        long number = digits.isEmpty() || digits.length() > 9 ? 1 : Long.parseLong(digits);
        String name;
        do {
            number++;
            name = (digits.isEmpty() ? like + "-" : stem) + number;
        } while (taken.contains(name));
        return name;
    }

    /** The name itself, or with the first letter behind it that makes it free. */
    static String free(String wanted, Collection<String> taken) {
        return Optional.of(wanted)
                .filter(name -> !taken.contains(name))
                .or(() -> "bcdefghijklmnopqrstuvwxyz"
                        .chars()
                        .mapToObj(letter -> wanted + (char) letter)
                        .filter(name -> !taken.contains(name))
                        .findFirst())
                .orElseGet(() -> next(wanted + "z1", taken));
    }
}
