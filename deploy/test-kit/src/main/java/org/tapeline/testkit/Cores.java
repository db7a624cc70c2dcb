package org.tapeline.testkit;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the services' architecture tests ask of the classes that hold the rules of the trade. */
public final class Cores {
  private static final Set<String> ROW_STREAMS = Set.of("stream", "streamAll", "getResultStream");
  private static final Set<String> ROW_SOURCES =
      Set.of(
          "io.quarkus.hibernate.orm.panache.PanacheEntityBase",
          "io.quarkus.hibernate.orm.panache.PanacheQuery",
          "jakarta.persistence.Query");

  private Cores() {}

  /**
   * The classes of these names know Java, each other and those of the other names, nothing else.
   *
   * @param core a pattern of full names
   * @param mayUse patterns of names outside of the core
   */
  public static ArchRule coreOf(String core, String... mayUse) {
    String allowed =
        Stream.concat(Stream.of("java\\..*", core), Stream.of(mayUse))
            .collect(Collectors.joining("|"));
    return classes()
        .that()
        .haveNameMatching(core)
        .should()
        .onlyDependOnClassesThat(areNamed(allowed));
  }

  /**
   * A stream of rows that nobody closes keeps its connection until the request ends, beside the one
   * that the request's transaction takes: some clients at once, and all wait for each other.
   */
  public static ArchRule readNoRowsAsStream() {
    return noClasses().should().callMethodWhere(describe("it streams rows", Cores::streamsRows));
  }

  private static boolean streamsRows(JavaMethodCall call) {
    return ROW_STREAMS.contains(call.getName())
        && ROW_SOURCES.stream().anyMatch(call.getTargetOwner()::isAssignableTo);
  }

  /** By the type itself or, for an array, by that of its elements; primitives are always fine. */
  public static DescribedPredicate<JavaClass> areNamed(String pattern) {
    return describe(
        "are named " + pattern,
        type -> {
          JavaClass element = type.getBaseComponentType();
          return element.isPrimitive() || element.getName().matches(pattern);
        });
  }

  /** Neither the name of a field nor that of its type is one that personal data goes by. */
  public static ArchCondition<JavaClass> haveNoComponentLike(Pattern personal) {
    return new ArchCondition<>("have no component that could hold personal data") {
      @Override
      public void check(JavaClass event, ConditionEvents events) {
        event
            .getFields()
            .forEach(
                field -> {
                  boolean could =
                      personal.matcher(field.getName()).matches()
                          || personal.matcher(field.getRawType().getSimpleName()).matches();
                  events.add(new SimpleConditionEvent(field, !could, field.getFullName()));
                });
      }
    };
  }
}
