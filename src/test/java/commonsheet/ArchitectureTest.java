package commonsheet;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Holds the arrows between packages that DEVELOPERS.md draws, and a few habits of the code. */
@AnalyzeClasses(packages = "commonsheet", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  /** Each package and the packages of ours that it may use. A new package is added here first. */
  private static final Map<String, Set<String>> MAY_USE =
      Map.ofEntries(
          Map.entry("quantity", Set.of()),
          Map.entry("columns", Set.of("quantity")),
          Map.entry("record", Set.of("quantity")),
          Map.entry("sheet", Set.of("quantity")),
          Map.entry("check", Set.of("record", "quantity")),
          Map.entry("review", Set.of("record", "check", "quantity")),
          Map.entry("layout", Set.of("sheet", "record", "quantity")),
          Map.entry("discharge", Set.of("record", "quantity")),
          Map.entry("chart", Set.of("sheet", "record", "columns", "quantity", "discharge")),
          Map.entry("score", Set.of("record", "quantity")),
          Map.entry("compare", Set.of("record", "columns", "quantity", "discharge")),
          Map.entry("export", Set.of("record", "quantity", "compare")),
          Map.entry(
              "api",
              Set.of(
                  "quantity",
                  "columns",
                  "record",
                  "sheet",
                  "check",
                  "layout",
                  "chart",
                  "compare",
                  "export")),
          Map.entry(
              "workbench",
              Set.of(
                  "quantity",
                  "columns",
                  "record",
                  "sheet",
                  "check",
                  "review",
                  "layout",
                  "chart",
                  "compare",
                  "export",
                  "api")),
          Map.entry(
              "cli",
              Set.of(
                  "workbench",
                  "quantity",
                  "columns",
                  "record",
                  "sheet",
                  "check",
                  "review",
                  "layout",
                  "chart",
                  "score",
                  "compare",
                  "export",
                  "api")));

  @ArchTest
  static void packagesUseOnlyWhatTheArrowsAllow(JavaClasses classes) {
    Map<String, String> broken = new TreeMap<>();
    for (JavaClass from : classes) {
      from.getDirectDependenciesFromSelf().stream()
          .filter(dependency -> !allowed(from, dependency.getTargetClass()))
          .forEach(dependency -> broken.put(dependency.getDescription(), from.getName()));
    }
    assertEquals("", broken.keySet().stream().collect(joining("\n")));
  }

  private static boolean allowed(JavaClass from, JavaClass to) {
    String source = packageOf(from);
    String target = packageOf(to);
    return target.isEmpty()
        || source.equals(target)
        || MAY_USE.getOrDefault(source, Set.of()).contains(target);
  }

  /** The first package below ours, or nothing for a class that is not ours. */
  private static String packageOf(JavaClass type) {
    String[] parts = type.getPackageName().split("\\.", -1);
    return parts[0].equals("commonsheet") ? (parts.length > 1 ? parts[1] : "(root)") : "";
  }

  @ArchTest
  static final ArchRule partsOfChartUseEachOtherOneWay =
      slices().matching("commonsheet.chart.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule findersOfPlotsKnowOnlyPlots =
      noClasses()
          .that()
          .resideInAnyPackage("commonsheet.chart.vector..", "commonsheet.chart.bitmap..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "commonsheet.chart",
              "commonsheet.chart.axis..",
              "commonsheet.chart.naming..",
              "commonsheet.chart.text..",
              "commonsheet.record..");

  @ArchTest
  static final ArchRule noPackagesUseEachOther =
      slices().matching("commonsheet.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule onlySheetKnowsThePdfLibraries =
      noClasses()
          .that()
          .resideOutsideOfPackage("commonsheet.sheet..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..", "technology.tabula..");

  @ArchTest
  static final ArchRule onlyCliKnowsTheCommandLine =
      noClasses()
          .that()
          .resideOutsideOfPackage("commonsheet.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  @ArchTest
  static final ArchRule onlyTheWorkbenchKnowsItsServer =
      noClasses()
          .that()
          .resideOutsideOfPackage("commonsheet.workbench..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("io.javalin..", "jakarta.servlet..", "org.eclipse.jetty..");

  @ArchTest
  static final ArchRule onlyCliPrints =
      noClasses()
          .that()
          .resideOutsideOfPackage("commonsheet.cli..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");

  @ArchTest
  static final ArchRule onlyCliEndsTheProcess =
      noClasses()
          .that()
          .resideOutsideOfPackage("commonsheet.cli..")
          .should()
          .callMethod(System.class, "exit", int.class);

  @ArchTest
  static final ArchRule publicFieldsDoNotChange = fields().that().arePublic().should().beFinal();
}
