package org.tapeline.proof.faults.compare;

import java.util.ArrayList;
import java.util.List;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.Shell;
import org.tapeline.proof.faults.process.StackPlace;

/** Nothing that was written was altered or removed: {@code deploy/verify-journal} says so. */
final class HashChains implements Check {

  @Override
  public void look(Evidence evidence, Findings findings) {
    StackPlace place = evidence.place();
    List<String> command = new ArrayList<>();
    command.add("env");
    command.add("JAVA_HOME=" + System.getProperty("java.home"));
    command.add(place.root().resolve("deploy/verify-journal").toString());
    command.add(place.broker());
    for (Part service : Part.SERVICES) {
      command.add(service.code());
      command.add("jdbc:postgresql://127.0.0.1:" + place.ports().postgres() + "/" + service.code());
    }
    Shell.Outcome outcome = Shell.run(command);
    if (!outcome.well()) {
      findings.differing("hash chains", outcome.said());
    }
    findings.looked("journals with their hash chains verified", Part.SERVICES.size());
  }
}
