package orlop.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import orlop.drawing.Message;
import orlop.drawing.Words;
import orlop.findings.Finding;

/** Findings as JSON. */
final class FindingsJson {
    private final JsonGenerator json;
    private final Words words;

    FindingsJson(JsonGenerator json, Words words) {
        this.json = json;
        this.words = words;
    }

    void write(List<Finding> findings) throws IOException {
        json.writeStartArray();
        for (Finding f : findings) {
            finding(f);
        }
        json.writeEndArray();
    }

    private void finding(Finding f) throws IOException {
        json.writeStartObject();
        json.writeStringField("rule", f.rule());
        json.writeStringField("severity", f.severity().word());
        place(f.place());
        json.writeStringField("title", words.text(f.title()));
        json.writeStringField("message", words.text(f.message()));
        JsonValues.text(
                json, "cure", f.cure() == null ? null : words.text(f.cure().label()));
        proposed(f);
        json.writeStringField("clause", f.clause());
        json.writeStringField("provenance", f.provenance());
        json.writeArrayFieldStart("assumptions");
        for (Message a : f.assumptions()) {
            json.writeString(words.text(a));
        }
        json.writeEndArray();
        json.writeArrayFieldStart("conditions");
        for (String c : f.conditions()) {
            json.writeString(c);
        }
        json.writeEndArray();
        json.writeBooleanField("accepted", f.accepted());
        JsonValues.text(json, "acceptedReason", f.acceptedReason());
        json.writeEndObject();
    }

    private void place(Finding.Place p) throws IOException {
        json.writeObjectFieldStart("place");
        if (!p.item().isEmpty()) { // a finding of the whole drawing has no place
            json.writeStringField(p.isCable() ? "cable" : "component", p.item());
        }
        if (p.isCable() && p.distanceM() != null) {
            json.writeStringField("end", p.atFrom() ? "from" : "to");
            JsonValues.number(json, "distanceM", p.distanceM());
        }
        json.writeEndObject();
    }

    private void proposed(Finding f) throws IOException {
        if (f.proposed() == null) {
            json.writeNullField("proposed");
            return;
        }
        json.writeObjectFieldStart("proposed");
        json.writeStringField("family", f.proposed().family());
        JsonValues.number(json, "ratingA", f.proposed().ratingA());
        JsonValues.number(json, "breakingKA", f.proposed().breakingKa());
        json.writeEndObject();
    }
}
