package org.tapeline.inventory.damage;

import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.damage.InspectionPolicy.Finding;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/**
 * The form for an inspection: as it was filled in, with what is wrong about it.
 *
 * @param parts the codes of the parts that may go into a helmet of its model
 */
public record InspectionForm(
    String tag,
    List<Finding> findings,
    List<String> parts,
    Inspection said,
    UUID commandId,
    List<FieldError> errors) {

  public boolean found(String code) {
    return said.findings().contains(code);
  }

  public boolean took(String part) {
    return said.parts().contains(part);
  }

  /** What is wrong with that field; empty when nothing is. */
  public String error(String field) {
    return errors.stream()
        .filter(e -> e.field().equals(field))
        .map(FieldError::message)
        .findFirst()
        .orElse("");
  }
}
