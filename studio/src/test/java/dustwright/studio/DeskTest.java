package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The working copy: every step kept, nobody overwritten, the file only when told. */
class DeskTest {
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-04T12:00:00Z"), ZoneOffset.UTC);

    @SuppressWarnings("NullAway.Init")
    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Path file;

    @BeforeEach
    void plant() throws IOException {
        file = Plants.copy("bakery", folder);
    }

    private static Desk.On alone(long version) {
        return new Desk.On(version, "");
    }

    private static void feeds(Desk desk, String by, String feed) {
        assertThat(desk.set(new Desk.On(desk.copy().version(), by), "inlets.A1.feed", Optional.empty(), feed, true)
                        .why())
                .isEmpty();
    }

    @Test
    void the_step_of_somebody_else_is_taken_back_on_purpose_only_and_stays_to_be_taken_up_again() throws IOException {
        try (Desk desk = open()) {
            feeds(desk, "Zoe", "50 kg/h");
            String zoes = desk.copy().text();
            Desk.Changed refused = desk.walk(new Desk.On(desk.copy().version(), "Dora"), -1, "");
            assertThat(refused.why().orElseThrow())
                    .contains("Step 2 was made by Zoe")
                    .contains("50 kg/h");
            assertThat(refused.whose()).isEqualTo("Zoe");
            assertThat(desk.copy().text()).isEqualTo(zoes);
            assertThat(desk.walk(new Desk.On(desk.copy().version(), "zoe"), -1, "")
                            .why())
                    .isEmpty();
            desk.walk(alone(desk.copy().version()), 1, "");
            assertThat(desk.walk(new Desk.On(desk.copy().version(), "Dora"), -1, "Zoe")
                            .why())
                    .isEmpty();
            assertThat(desk.copy().at().mover()).isEqualTo("Dora");
            feeds(desk, "Dora", "60 kg/h");
            assertThat(desk.copy().left()).isEqualTo(1);
        }
        try (Desk desk = open()) {
            Kept.Left left = desk.left().get(0);
            assertThat(left.author()).isEqualTo("Zoe");
            assertThat(left.leaver()).isEqualTo("Dora");
            assertThat(left.what()).contains("50 kg/h");
            assertThat(left.leftAt()).isEqualTo("2026-03-04T12:00:00Z");
            assertThat(desk.takeUp(new Desk.On(desk.copy().version(), "Zoe"), left.version())
                            .why())
                    .isEmpty();
            assertThat(desk.copy().text()).contains("50 kg/h").doesNotContain("60 kg/h");
            assertThat(desk.walk(new Desk.On(desk.copy().version(), "Zoe"), -1, "")
                            .copy()
                            .text())
                    .contains("60 kg/h");
            assertThat(desk.takeUp(alone(desk.copy().version()), 999).why()).isPresent();
        }
    }

    private Desk open() throws IOException {
        return Desk.open(file, Kept.open(folder.resolve("kept.db"), file), NOON);
    }

    @Test
    void a_changed_value_is_there_when_the_plant_is_opened_again_and_the_file_is_as_it_was() throws IOException {
        String before = Files.readString(file);
        try (Desk desk = open()) {
            Desk.Changed changed =
                    desk.set(alone(desk.copy().version()), "runs.DA1.tube", Optional.empty(), "T25", true);
            assertThat(changed.why()).isEmpty();
        }
        try (Desk desk = open()) {
            assertThat(desk.copy().plant().orElseThrow().run("DA1").tube()).isEqualTo("T25");
            assertThat(desk.copy().text()).isEqualTo(before.replaceFirst("(DA1: .*?tube: )T2,", "$1T25,"));
        }
        assertThat(Files.readString(file)).isEqualTo(before);
    }

    @Test
    void what_cannot_be_read_is_refused_with_the_place_and_nothing_changes() throws IOException {
        try (Desk desk = open()) {
            Desk.Copy before = desk.copy();
            Desk.Changed changed = desk.set(alone(before.version()), "inlets.A1.feed", Optional.empty(), "40", true);
            assertThat(changed.why().orElseThrow()).contains("inlets.A1.feed").contains("unit");
            assertThat(desk.copy()).isEqualTo(before);
        }
    }

    @Test
    void text_with_a_fault_is_kept_and_the_drawing_stays_with_the_plant_before_it() throws IOException {
        try (Desk desk = open()) {
            String wrong = desk.copy().text().replace("users:", "usres:");
            desk.type(alone(desk.copy().version()), wrong);
        }
        try (Desk desk = open()) {
            assertThat(desk.copy().text()).contains("usres:");
            assertThat(desk.copy().faults()).isNotEmpty();
            Desk.Changed back = desk.walk(alone(desk.copy().version()), -1, "");
            assertThat(back.copy().faults()).isEmpty();
            assertThat(back.copy().plant()).isPresent();
        }
    }

    @Test
    void a_change_thought_out_on_an_older_version_overwrites_nobody() throws IOException {
        try (Desk desk = open()) {
            long old = desk.copy().version();
            desk.set(alone(old), "inlets.A1.feed", Optional.empty(), "50 kg/h", true);
            Desk.Changed second = desk.set(alone(old), "inlets.A1.feed", Optional.empty(), "60 kg/h", true);
            assertThat(second.stale()).isTrue();
            assertThat(desk.copy().text()).contains("50 kg/h").doesNotContain("60 kg/h");
        }
    }

    @Test
    void one_walks_back_and_forth_and_a_new_change_ends_the_way_forth() throws IOException {
        try (Desk desk = open()) {
            String first = desk.copy().text();
            desk.set(alone(desk.copy().version()), "inlets.A1.feed", Optional.empty(), "50 kg/h", true);
            String second = desk.copy().text();
            assertThat(desk.walk(alone(desk.copy().version()), -1, "").copy().text())
                    .isEqualTo(first);
            assertThat(desk.walk(alone(desk.copy().version()), 1, "").copy().text())
                    .isEqualTo(second);
            desk.walk(alone(desk.copy().version()), -1, "");
            desk.set(alone(desk.copy().version()), "inlets.A2.feed", Optional.empty(), "60 kg/h", true);
            assertThat(desk.walk(alone(desk.copy().version()), 1, "").why()).isPresent();
            assertThat(desk.copy().text()).contains("60 kg/h").doesNotContain("50 kg/h");
        }
    }

    @Test
    void versions_are_never_used_twice_so_that_an_old_page_cannot_pass_for_a_new_one() throws IOException {
        try (Desk desk = open()) {
            desk.set(alone(desk.copy().version()), "inlets.A1.feed", Optional.empty(), "50 kg/h", true);
            long changed = desk.copy().version();
            desk.walk(alone(changed), -1, "");
            long back = desk.copy().version();
            desk.set(alone(back), "inlets.A1.feed", Optional.empty(), "70 kg/h", true);
            assertThat(desk.copy().version()).isGreaterThan(back);
            assertThat(back).isGreaterThan(changed);
        }
    }

    @Test
    void a_file_changed_outside_is_the_next_step_and_ours_is_one_step_back() throws IOException {
        try (Desk desk = open()) {
            desk.set(alone(desk.copy().version()), "inlets.A1.feed", Optional.empty(), "50 kg/h", true);
        }
        String outside = Files.readString(file).replace("Bakery ingredients room", "Bakery, changed outside");
        Files.writeString(file, outside);
        try (Desk desk = open()) {
            assertThat(desk.copy().text()).isEqualTo(outside);
            assertThat(desk.walk(alone(desk.copy().version()), -1, "").copy().text())
                    .contains("50 kg/h");
        }
    }

    @Test
    void the_file_is_written_when_told_and_not_over_a_change_from_outside() throws IOException {
        try (Desk desk = open()) {
            desk.set(alone(desk.copy().version()), "inlets.A1.feed", Optional.empty(), "50 kg/h", true);
            assertThat(desk.write(desk.copy().version())).isEmpty();
            assertThat(Files.readString(file)).isEqualTo(desk.copy().text());
            Files.writeString(file, Files.readString(file) + "# by somebody else\n");
            assertThat(desk.write(desk.copy().version())).isPresent();
            assertThat(Files.readString(file)).endsWith("# by somebody else\n");
        }
    }

    @Test
    void the_file_written_keeps_its_mode_and_the_link_to_it_and_nothing_beside_it_is_touched() throws IOException {
        assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Set<PosixFilePermission> mode = PosixFilePermissions.fromString("rw-rw-r--");
        Files.setPosixFilePermissions(file, mode);
        Path shared =
                Files.move(file, Files.createDirectory(folder.resolve("shared")).resolve("plant of all.yaml"));
        Files.createSymbolicLink(file, shared);
        Path stranger = Files.writeString(folder.resolve(file.getFileName() + ".new"), "of somebody else");
        try (Desk desk = open()) {
            feeds(desk, "", "50 kg/h");
            assertThat(desk.write(desk.copy().version())).isEmpty();
        }
        assertThat(file).isSymbolicLink();
        assertThat(Files.readString(shared)).contains("50 kg/h");
        assertThat(Files.getPosixFilePermissions(shared)).isEqualTo(mode);
        assertThat(Files.readString(stranger)).isEqualTo("of somebody else");
        try (Stream<Path> there = Files.list(shared.getParent())) {
            assertThat(there).containsExactly(shared);
        }
    }

    @Test
    void a_revision_carries_who_and_when_and_stays_as_it_is() throws IOException {
        try (Desk desk = open()) {
            assertThat(desk.accept(desk.copy().version(), "A. Engineer", "as quoted")
                            .revision())
                    .isPresent();
            desk.set(alone(desk.copy().version()), "inlets.A1.feed", Optional.empty(), "50 kg/h", true);
        }
        try (Desk desk = open()) {
            Kept.Revision revision = desk.revisions().get(0);
            assertThat(revision.at()).isEqualTo("2026-03-04T12:00:00Z");
            assertThat(revision.author()).isEqualTo("A. Engineer");
            assertThat(revision.text()).isEqualTo(Files.readString(file));
        }
    }

    @Test
    void text_with_faults_is_no_revision() throws IOException {
        try (Desk desk = open()) {
            desk.type(alone(desk.copy().version()), "dustwright: 1\nplant: {}\n");
            assertThat(desk.accept(desk.copy().version(), "A. Engineer", "").why())
                    .contains("has faults");
        }
    }

    @Test
    void practice_for_quick_edits_ends_when_told_and_leaves_no_step() throws Exception {
        try (Desk desk = open()) {
            Desk.Copy before = desk.copy();
            AtomicInteger rounds = new AtomicInteger();
            Thread practice = Practice.on(desk, () -> rounds.incrementAndGet() > 3);
            practice.join();
            assertThat(rounds).hasValue(4);
            assertThat(desk.copy()).isEqualTo(before);
            assertThat(desk.revisions()).isEmpty();
        }
    }
}
