package org.tapeline.fitting.phone;

import java.util.List;
import org.tapeline.fitting.session.Need;
import org.tapeline.fitting.session.Proposal;

/** What is to be done next, in the form that programs get from the service too. */
final class ProposalOut {
  private ProposalOut() {}

  static JsonOut write(Proposal proposal) {
    return switch (proposal) {
      case Proposal.Nothing p -> kind("nothing");
      case Proposal.Resume p -> kind("resume");
      case Proposal.SignOff p -> kind("sign-off");
      case Proposal.Look p -> kind("look").with("check", p.check());
      case Proposal.Try p -> write(p);
      case Proposal.PutOn p ->
          kind("put-on").with("model", p.model()).with("size", p.size()).with("tags", p.tags());
      case Proposal.MeasureAgain p -> kind("measure-again").with("needs", needs(p.otherwise()));
      case Proposal.EndWithoutFit p -> kind("end-without-fit").with("needs", needs(p.needs()));
    };
  }

  static JsonOut write(Proposal.Try p) {
    return kind("try")
        .with("check", p.check())
        .with("remedy", p.remedy())
        .with("item", p.item())
        .with("onRecord", p.onRecord());
  }

  static List<JsonOut> needs(List<Need> needs) {
    return needs.stream().map(EventsOut::need).toList();
  }

  private static JsonOut kind(String kind) {
    return JsonOut.object().with("kind", kind);
  }
}
