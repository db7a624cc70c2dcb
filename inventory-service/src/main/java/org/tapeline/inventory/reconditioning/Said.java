package org.tapeline.inventory.reconditioning;

import java.util.List;
import org.tapeline.journal.quarkus.http.Problem;

/** What was typed on a batch's page, with what is wrong about it. */
public record Said(Receipt receipt, String tag, String wrong, List<Problem.FieldError> errors) {

  static Said nothing(ReconditioningPolicy policy) {
    String usual = new Money(policy.costCents(), policy.currency()).typed();
    return new Said(new Receipt("recertified", "", usual, "", List.of()), "", "", List.of());
  }

  Said typed(String typed) {
    return new Said(receipt, typed, wrong, errors);
  }

  Said with(String sentence, List<Problem.FieldError> fields) {
    return new Said(receipt, tag, sentence, fields);
  }

  public boolean ticked(String helmet) {
    return receipt.tags().contains(helmet);
  }

  /** What is wrong with that field; empty when nothing is. */
  public String error(String field) {
    return errors.stream()
        .filter(e -> e.field().equals(field))
        .map(Problem.FieldError::message)
        .findFirst()
        .orElse("");
  }
}
