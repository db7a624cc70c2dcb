package org.tapeline.fitting.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import org.tapeline.journal.Transactions;

/**
 * Helmets of which an event could not be read: it is parked, and what is known of the helmet is
 * older than it looks. Nothing sure can be said of them.
 */
@ApplicationScoped
public class UnreadHelmets {
  private static final String STREAM = "helmet-";

  private final Transactions transactions;

  UnreadHelmets(Transactions transactions) {
    this.transactions = transactions;
  }

  /** Those of the tags. */
  public Set<String> among(Collection<String> tags) {
    if (tags.isEmpty()) {
      return Set.of();
    }
    return transactions.required(
        connection -> {
          Set<String> found = new HashSet<>();
          try (PreparedStatement select =
              connection.prepareStatement(
                  "select distinct stream from inbox_parked where stream = any (?)")) {
            Object[] streams = tags.stream().map(tag -> STREAM + tag).toArray();
            select.setArray(1, connection.createArrayOf("text", streams));
            try (ResultSet row = select.executeQuery()) {
              while (row.next()) {
                found.add(row.getString(1).substring(STREAM.length()));
              }
            }
          }
          return found;
        });
  }
}
