package org.tapeline.sizing.mix;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Subscription;
import org.tapeline.testkit.EventContracts;

@DisplayName("What sizing reads of inventory")
class InventoryContractTest {
  private final EventContracts contracts = EventContracts.load();
  private final Subscription subscription =
      new UsableHelmets(null).declareOn(Subscription.named("sizing"));

  @Test
  @DisplayName("is promised by inventory's contracts, field for field")
  void consumed() {
    assertThat(subscription.views()).isNotEmpty();
    subscription.views().forEach(contracts::checkConsumed);
  }

  @Test
  @DisplayName("leaves no type of the topic out: each is handled or ignored by name")
  void everyType() {
    assertThat(contracts.typesOf("inventory.events")).isNotEmpty().allMatch(subscription::knows);
  }
}
