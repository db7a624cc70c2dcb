package org.tapeline.fitting.session;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * What is to be done next, for programs and phones; what does not belong to the kind is absent.
 *
 * @param kind put-on, look, try, measure-again, end-without-fit, sign-off, resume or nothing
 * @param tags helmets of the kind wanted that are free at the field
 * @param needs what a fail names
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ProposalView(
    String kind,
    String check,
    String remedy,
    String item,
    Boolean onRecord,
    String model,
    String size,
    List<String> tags,
    List<Need> needs) {

  public static ProposalView of(Proposal proposal) {
    return switch (proposal) {
      case Proposal.Nothing p -> kind("nothing");
      case Proposal.Resume p -> kind("resume");
      case Proposal.SignOff p -> kind("sign-off");
      case Proposal.Look p ->
          new ProposalView("look", p.check(), null, null, null, null, null, null, null);
      case Proposal.Try p ->
          new ProposalView(
              "try",
              p.check(),
              p.remedy(),
              p.item().orElse(null),
              p.onRecord(),
              null,
              null,
              null,
              null);
      case Proposal.PutOn p ->
          new ProposalView("put-on", null, null, null, null, p.model(), p.size(), p.tags(), null);
      case Proposal.MeasureAgain p -> needing("measure-again", p.otherwise());
      case Proposal.EndWithoutFit p -> needing("end-without-fit", p.needs());
    };
  }

  private static ProposalView kind(String kind) {
    return new ProposalView(kind, null, null, null, null, null, null, null, null);
  }

  private static ProposalView needing(String kind, List<Need> needs) {
    return new ProposalView(kind, null, null, null, null, null, null, null, needs);
  }
}
