package dustwright.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The directions of ARCHITECTURE.md, held by the build. */
class ArchitectureTest {
    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("dustwright.engine");

    @Test
    void trade_concepts_do_not_depend_on_each_other_in_circles() {
        slices().matching("dustwright.engine.(*)..").should().beFreeOfCycles().check(ENGINE);
    }

    @Test
    void dependencies_point_downward_only() {
        layeredArchitecture()
                .consideringOnlyDependenciesInAnyPackage("dustwright.engine..")
                .layer("study")
                .definedBy("dustwright.engine")
                .layer("sheet")
                .definedBy("dustwright.engine.sheet")
                .layer("rehearsal")
                .definedBy("dustwright.engine.rehearsal")
                .layer("review")
                .definedBy("dustwright.engine.review")
                .layer("interlock")
                .definedBy("dustwright.engine.interlock")
                .layer("audit")
                .definedBy("dustwright.engine.audit")
                .layer("sizing")
                .definedBy("dustwright.engine.sizing")
                .layer("coverage")
                .definedBy("dustwright.engine.coverage")
                .layer("network")
                .definedBy("dustwright.engine.network")
                .layer("plant")
                .definedBy("dustwright.engine.plant")
                .layer("conveying")
                .definedBy("dustwright.engine.conveying")
                .layer("parts")
                .definedBy(
                        "dustwright.engine.tubing",
                        "dustwright.engine.producer",
                        "dustwright.engine.receiver",
                        "dustwright.engine.rotaryvalve",
                        "dustwright.engine.bagging",
                        "dustwright.engine.hazard")
                .layer("air")
                .definedBy("dustwright.engine.air")
                .layer("finding")
                .definedBy("dustwright.engine.finding")
                .layer("quantity")
                .definedBy("dustwright.engine.quantity")
                .whereLayer("study")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("sheet")
                .mayOnlyBeAccessedByLayers("study", "review", "rehearsal")
                .whereLayer("rehearsal")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("review")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("interlock")
                .mayOnlyBeAccessedByLayers("rehearsal", "review", "sheet")
                .whereLayer("audit")
                .mayOnlyBeAccessedByLayers("study")
                .whereLayer("sizing")
                .mayOnlyBeAccessedByLayers("study")
                .whereLayer("coverage")
                .mayOnlyBeAccessedByLayers("study", "sheet", "sizing")
                .whereLayer("network")
                .mayOnlyBeAccessedByLayers("study", "review", "rehearsal", "sheet", "audit", "sizing", "coverage")
                .whereLayer("plant")
                .mayOnlyBeAccessedByLayers(
                        "study", "review", "rehearsal", "sheet", "audit", "sizing", "coverage", "interlock", "network")
                .whereLayer("conveying")
                .mayOnlyBeAccessedByLayers(
                        "study",
                        "review",
                        "rehearsal",
                        "sheet",
                        "audit",
                        "sizing",
                        "coverage",
                        "interlock",
                        "network",
                        "plant")
                .whereLayer("parts")
                .mayOnlyBeAccessedByLayers(
                        "study",
                        "review",
                        "rehearsal",
                        "sheet",
                        "audit",
                        "coverage",
                        "sizing",
                        "interlock",
                        "network",
                        "plant",
                        "conveying")
                .whereLayer("air")
                .mayOnlyBeAccessedByLayers(
                        "study",
                        "review",
                        "rehearsal",
                        "sheet",
                        "audit",
                        "coverage",
                        "sizing",
                        "interlock",
                        "network",
                        "plant",
                        "conveying",
                        "parts")
                .check(ENGINE);
    }

    /** Only the bundled tables of engine.reference are read, from the program's own jar. */
    @Test
    void the_engine_is_pure_no_files_clocks_logs_or_unseeded_random_numbers() {
        noClasses()
                .that()
                .resideOutsideOfPackage("dustwright.engine.reference")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.io..",
                        "java.nio.file..",
                        "java.net..",
                        "java.util.logging..",
                        "org.slf4j..",
                        "java.sql..")
                .orShould()
                .dependOnClassesThat()
                .resideInAnyPackage("java.time..")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Random")
                .check(ENGINE);
    }

    @Test
    void bundled_tables_are_read_from_the_jar_and_never_from_a_disk_or_a_network() {
        noClasses()
                .that()
                .resideInAPackage("dustwright.engine.reference")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.nio.file..",
                        "java.net..",
                        "java.util.logging..",
                        "org.slf4j..",
                        "java.sql..",
                        "java.time..")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.File")
                .check(ENGINE);
    }

    @Test
    void the_audit_shares_no_solver_code() {
        noClasses()
                .that()
                .resideInAPackage("dustwright.engine.audit")
                .should()
                .dependOnClassesThat(com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage(
                                "dustwright.engine.network")
                        .and(com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameEndingWith("Solver")
                                .or(com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameStartingWith(
                                        "Network"))))
                .allowEmptyShould(true)
                .check(ENGINE);
    }
}
