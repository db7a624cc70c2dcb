package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.demand.LeadTime;

/**
 * How long things from outside take: the policy's days, and what past requests took since they were
 * picked (else sent, else made). The time until then is the warehouse's review, which is counted on
 * its own.
 */
@ApplicationScoped
public class LeadTimes {
  private static final String TOOK =
      """
      select extract(epoch from received_at - coalesce(sent_at, requested_at))::float8 / 86400
        from restock
       where state = 'received' and kind = 'restock' and requested_at is not null
         and item like ? and (item like 'helmet:%') = ?
       order by received_at desc limit 60
      """;

  private final RestockPolicy policy;
  private final RestockItems items;
  private final Database database;

  LeadTimes(RestockPolicy policy, RestockItems items, Database database) {
    this.policy = policy;
    this.items = items;
    this.database = database;
  }

  /** By item where the policy has days for the item alone, else by helmets and parts. */
  LeadTime fromOutside(String item) {
    String like = policy.hasOwnDays(item) ? item : "%";
    List<Double> took =
        database.list(TOOK, row -> row.getDouble(1), like, item.startsWith("helmet:"));
    return LeadTime.around(policy.days(item), items.lead().worthArrivals(), items.lead().spread())
        .after(took.reversed());
  }
}
