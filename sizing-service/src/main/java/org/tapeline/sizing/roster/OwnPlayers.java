package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** The players whom the caller may see: a fitter those of own fields, the manager all. */
@ApplicationScoped
class OwnPlayers {
  private static final int ROWS_OF_A_QUERY = 5000;

  private final Caller caller;
  private final Players players;

  OwnPlayers(Caller caller, Players players) {
    this.caller = caller;
    this.players = players;
  }

  /**
   * @param reference id or roster number; the history of somebody erased stays readable
   * @throws Problem when there is no such player, or at another's field
   */
  PlayerView one(String reference) {
    RosterNumber number =
        RosterNumber.of(reference)
            .orElseThrow(
                () -> Problem.notFound("There is no player " + reference + ". Search by name."));
    PlayerRow row = PlayerRow.findById(number.player);
    PlayerView view =
        row == null
            ? PlayerView.erased(number, players.state(number.player))
            : PlayerView.of(List.of(row)).getFirst();
    if (!caller.mayWorkAt(view.field())) {
      throw Problem.otherField("You do not work at this player's field.");
    }
    return view;
  }

  /** Some may be {@code null}: then they do not narrow the search. */
  List<PlayerView> search(String field, String team, String words, int most) {
    List<PlayerRow> rows = PlayerRow.search(search(field, team, words), most);
    List<PlayerView> views = new ArrayList<>(rows.size());
    for (int from = 0; from < rows.size(); from += ROWS_OF_A_QUERY) {
      int to = Math.min(from + ROWS_OF_A_QUERY, rows.size());
      views.addAll(PlayerView.of(rows.subList(from, to)));
    }
    return views;
  }

  /** Roster numbers of those whose head was last measured before that, longest ago first. */
  List<String> waiting(String team, Instant since) {
    return PlayerRow.waiting(search("", team, ""), since);
  }

  List<String> teams() {
    return PlayerRow.teams(search("", "", ""));
  }

  private PlayerSearch search(String field, String team, String words) {
    Optional<Set<String>> fields =
        caller.isManager() ? Optional.empty() : Optional.of(caller.fields());
    return new PlayerSearch(fields, orEmpty(field), orEmpty(team), orEmpty(words));
  }

  private static String orEmpty(String text) {
    return text == null ? "" : text.strip();
  }
}
