package org.tapeline.fitting.fieldapp;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.helmet.HelmetReservation;

/** The helmets of a pack; those out of use too, so that the phone can say why one is not free. */
@ApplicationScoped
class FieldHelmets {

  List<FieldPack.Helmet> at(Set<String> fields) {
    List<HelmetCopy> helmets = HelmetCopy.allAt(fields);
    Map<String, List<UUID>> kept =
        HelmetReservation.playersOf(helmets.stream().map(h -> h.tag).toList());
    return helmets.stream().map(h -> held(h, kept.getOrDefault(h.tag, List.of()))).toList();
  }

  private static FieldPack.Helmet held(HelmetCopy helmet, List<UUID> keptFor) {
    return new FieldPack.Helmet(
        helmet.tag,
        helmet.model,
        helmet.size,
        helmet.place,
        helmet.stands(),
        Optional.ofNullable(helmet.holder),
        keptFor,
        Optional.ofNullable(helmet.certifiedUntil).map(Object::toString));
  }
}
