package outrigger.presets;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "outrigger.presets", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule IMPORTS_NOTHING_OF_OURS = classes().should().onlyDependOnClassesThat()
      .resideInAnyPackage("outrigger.presets", "java..", "org.tomlj");

  @ArchTest
  static final ArchRule READS_NO_NETWORK_AND_PRINTS_NOTHING = noClasses().should().dependOnClassesThat()
      .resideInAnyPackage("java.net..", "java.util.logging..").orShould().dependOnClassesThat()
      .areAssignableTo(java.io.PrintStream.class);
}
