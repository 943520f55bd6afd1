package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import spangle.audit.RuleBook;

/** The audit names the search's constraints by text only; the texts must stay true. */
class RuleNamesTest {
  @Test
  void everyConstraintTheRuleBookNamesExists() throws IllegalAccessException {
    Set<String> constraints = new TreeSet<>();
    for (Field field : WeekRules.class.getDeclaredFields()) {
      if (Modifier.isStatic(field.getModifiers()) && field.getType() == String.class) {
        constraints.add((String) field.get(null));
      }
    }
    Set<String> named = new TreeSet<>();
    RuleBook.entries().forEach(entry -> entry.solverConstraint().ifPresent(named::add));
    assertThat(named).hasSizeGreaterThan(8).isSubsetOf(constraints);
  }
}
