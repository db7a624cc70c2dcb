package org.tapeline.journal.chain;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.Transactions;

/** What this service added to a chain: everything with one correlation id, in order. */
public final class Chains {
  private static final String SELECT =
      """
      select event_id, stream, version, type, recorded_at, causation_id, data
      from journal where correlation_id = ? order by position
      """;

  private final String service;
  private final Transactions transactions;

  public Chains(String service, Transactions transactions) {
    this.service = service;
    this.transactions = transactions;
  }

  /**
   * An event of the chain.
   *
   * @param causationId the command or event that led to it directly
   */
  public record Link(
      String service,
      UUID id,
      String stream,
      long version,
      String type,
      Instant time,
      UUID causationId,
      JsonNode data) {}

  public List<Link> of(UUID correlationId) {
    return transactions.required(
        connection -> {
          List<Link> links = new ArrayList<>();
          try (PreparedStatement select = connection.prepareStatement(SELECT)) {
            select.setObject(1, correlationId);
            try (ResultSet row = select.executeQuery()) {
              while (row.next()) {
                links.add(link(row));
              }
            }
          }
          return links;
        });
  }

  private Link link(ResultSet row) throws SQLException {
    try {
      return new Link(
          service,
          row.getObject(1, UUID.class),
          row.getString(2),
          row.getLong(3),
          row.getString(4),
          row.getObject(5, OffsetDateTime.class).toInstant(),
          row.getObject(6, UUID.class),
          EventJson.MAPPER.readTree(row.getString(7)));
    } catch (JsonProcessingException e) {
      throw new SQLException("A journal row is not JSON", e);
    }
  }
}
