package org.tapeline.fitting.signoff;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tapeline.fitting.signoff.SignOff.Live;
import org.tapeline.fitting.signoff.SignOffCommand.Lapse;
import org.tapeline.fitting.signoff.SignOffCommand.SignOffPlayer;
import org.tapeline.fitting.signoff.SignOffCommand.Withdraw;
import org.tapeline.fitting.signoff.SignOffCommand.WithdrawHelmet;
import org.tapeline.fitting.signoff.SignOffCommand.WithdrawSession;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffLapsed;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffWithdrawn;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;

/**
 * The rules of a sign-off. A withdrawal that does not concern the sign-off that holds comes to
 * nothing: whoever asks for it may be late.
 */
public final class SignOffDecider {
  private SignOffDecider() {}

  public static List<SignOffEvent> decide(SignOff state, SignOffCommand command) {
    return switch (command) {
      case SignOffPlayer c ->
          List.of(
              new SignedOff(
                  c.player(),
                  c.session(),
                  c.tag(),
                  c.model(),
                  c.size(),
                  c.field(),
                  c.fitter(),
                  c.conditions(),
                  c.protocol(),
                  c.protocolVersion(),
                  c.at()));
      case Withdraw c -> withdrawn(state.live(), c.why(), c.at());
      case WithdrawHelmet c ->
          withdrawn(state.live().filter(l -> l.tag().equals(c.tag())), c.why(), c.at());
      case WithdrawSession c ->
          withdrawn(state.live().filter(l -> l.session().equals(c.session())), c.why(), c.at());
      case Lapse c ->
          state
              .live()
              .filter(l -> l.session().equals(c.session()))
              .<List<SignOffEvent>>map(
                  l -> List.of(new SignOffLapsed(l.player(), l.tag(), c.why(), c.at())))
              .orElse(List.of());
    };
  }

  private static List<SignOffEvent> withdrawn(Optional<Live> live, String why, Instant at) {
    return live.<List<SignOffEvent>>map(
            l -> List.of(new SignOffWithdrawn(l.player(), l.tag(), why, at)))
        .orElse(List.of());
  }

  public static SignOff evolve(SignOff state, SignOffEvent event) {
    return switch (event) {
      case SignedOff e ->
          new SignOff(
              Optional.of(new Live(e.player(), e.session(), e.tag(), e.model(), e.size(), e.at())));
      case SignOffWithdrawn e -> SignOff.NONE;
      case SignOffLapsed e -> SignOff.NONE;
    };
  }
}
