package outrigger.generator.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import outrigger.generator.clash.ClashReport;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.run.PartJson;
import outrigger.generator.run.UnprintableException;
import outrigger.generator.run.UnsoundException;
import outrigger.generator.run.Version;
import outrigger.generator.run.Working;

/** Tells why a command did not do what was asked. */
final class Failures {
  private Failures() {}

  static int badInput(Console console, InputException e) {
    if (console.json()) {
      console.json(Exit.BAD_INPUT, json -> json.objects("faults", e.faults(), FaultJson::write));
      return Exit.BAD_INPUT;
    }
    for (Fault fault : e.faults()) {
      console.err().print(fault.message() + "\n");
    }
    if (e.faults().size() > 1) {
      console.err().print(e.faults().size() + " faults; nothing was written.\n");
    }
    return Exit.BAD_INPUT;
  }

  static int unsound(Console console, UnsoundException e) {
    if (console.json()) {
      console.json(Exit.UNSOUND, json -> json.objects("unsound", e.parts(), (one, part) -> {
        one.put("name", part.name()).put("kind", part.kind());
        CheckReport.verdict(one, part.verdict());
      }));
      return Exit.UNSOUND;
    }
    for (UnsoundException.Unsound part : e.parts()) {
      console.err().print(part.name() + ": built, but its mesh is not sound:\n");
      CheckReport.faults(part.verdict()).forEach(line -> console.err().print("  " + line + "\n"));
    }
    console.err().print("Nothing was written. This should not happen: please report it with the command and its "
        + "plan.\n");
    return Exit.UNSOUND;
  }

  static int unprintable(Console console, UnprintableException e) {
    if (console.json()) {
      console.json(Exit.UNSOUND, json -> json.objects("parts", e.batch().parts(),
          (part, made) -> PartJson.write(part, e.batch(), made)));
      return Exit.UNSOUND;
    }
    MakeReport.concerns(e.parts()).forEach(line -> console.err().print(line + "\n"));
    int count = e.parts().size();
    console.err().print(count + (count == 1 ? " part is" : " parts are") + " sound but will not print as drawn; "
        + "nothing was written. Change what is advised, or give --write-anyway.\n");
    return Exit.UNSOUND;
  }

  static int clashing(Console console, Working working) {
    ClashReport clashes = working.standing().orElseThrow().clashes();
    if (console.json()) {
      console.json(Exit.UNSOUND, working::write);
      return Exit.UNSOUND;
    }
    clashes.faults().forEach(line -> console.err().print(line + "\n"));
    int count = clashes.faults().size();
    console.err().print((count == 1 ? "One fault" : count + " faults") + " of how the truck goes together; nothing was "
        + "written. Move or change a part, or give --write-anyway.\n");
    return Exit.UNSOUND;
  }

  static int defect(Console console, Throwable defect) {
    StringWriter trace = new StringWriter();
    defect.printStackTrace(new PrintWriter(trace));
    if (console.json()) {
      console.json(Exit.DEFECT, json -> json.put("defect", defect.toString()).put("program", Version.words())
          .texts("trace", Arrays.asList(trace.toString().split("\\R"))));
    } else {
      console.err().print(trace);
      console.err().print("This is a defect of " + Version.words() + ", not of your input. Please report it with the "
          + "command and the lines above.\n");
    }
    return Exit.DEFECT;
  }
}
