package org.tapeline.fitting.phone;

import java.util.List;
import org.tapeline.fitting.session.Need;
import org.tapeline.fitting.session.Proposal;
import org.tapeline.fitting.session.ProposalView;

/** What is to be done next, in the form that programs get from the service too. */
final class ProposalOut {
  private ProposalOut() {}

  static JsonOut write(Proposal proposal) {
    ProposalView said = ProposalView.of(proposal);
    return JsonOut.object()
        .with("kind", said.kind())
        .with("check", said.check())
        .with("remedy", said.remedy())
        .with("item", said.item())
        .with("onRecord", said.onRecord())
        .with("model", said.model())
        .with("size", said.size())
        .with("tags", said.tags())
        .with("needs", said.needs() == null ? null : needs(said.needs()));
  }

  static List<JsonOut> needs(List<Need> needs) {
    return needs.stream().map(EventsOut::need).toList();
  }
}
