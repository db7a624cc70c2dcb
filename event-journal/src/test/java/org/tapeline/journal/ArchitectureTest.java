package org.tapeline.journal;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(
    packages = "org.tapeline.journal",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule containerStaysInItsPackage =
      noClasses()
          .that()
          .resideOutsideOfPackage("..journal.quarkus..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("io.quarkus..", "jakarta..", "org.eclipse.microprofile..")
          .because("tools and tests run the journal without a container");

  @ArchTest
  static final ArchRule kafkaStaysOutOfTheStore =
      noClasses()
          .that()
          .resideInAnyPackage(
              "org.tapeline.journal",
              "..journal.store..",
              "..journal.command..",
              "..journal.chain..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.kafka..")
          .because("an append must not wait for the broker");
}
