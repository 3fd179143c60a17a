using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>The words of the athlete that are worked out from answers and clearances (see <see cref="ComputedWords"/>).</summary>
internal sealed class ComputedFacts(AthleteRecord record, Vocabulary vocabulary, DateOnly on, Growth growth, FactValue[] facts)
{
    /// <summary>Hours after hard throwing within which a shoulder measure says more about the throwing than about the shoulder.</summary>
    private const double RestedAfterHours = 24;

    /// <summary>Fills their slots.</summary>
    public void Fill()
    {
        Set("relative-strength", RelativeStrength());
        Set("shoulder-flexion-loss", Loss("shoulder-flexion"));
        Set("internal-rotation-loss", Loss("shoulder-internal-rotation"));
        Set("rotation-arc-loss", Loss("shoulder-internal-rotation", "shoulder-external-rotation"));
        Set("grown-since-screen", growth.Metres is { } metres ? FactValue.Number(metres) : FactValue.Undecided);
        new ClearanceFacts(record, vocabulary, on, facts).Fill();
    }

    /// <summary>With straps the grip is no limit, so the number is not comparable; not knowing about straps is the same.</summary>
    private FactValue RelativeStrength()
    {
        var (lifted, straps, mass) = (Get("tested-1rm"), Get("tested-1rm-straps"), Get("mass"));
        return lifted.IsKnown && mass.IsKnown && straps == FactValue.YesNo(false)
            ? FactValue.Number(Math.Round(lifted.Low / mass.Low, 9))
            : FactValue.Undecided;
    }

    /// <summary>Rested baseline minus the throwing side; several words are added up first.</summary>
    private FactValue Loss(params string[] words)
    {
        var (loss, decided) = (0.0, IsRested());
        foreach (var id in words)
        {
            var (baseline, now) = (Get(id + "-baseline"), Get(id, "throwing"));
            if (baseline.State == FactState.NotApplicable || now.State == FactState.NotApplicable)
                return FactValue.NotApplicable;
            decided &= baseline.IsExact && now.IsExact;
            loss += baseline.Low - now.Low;
        }
        return decided ? FactValue.Number(Math.Round(loss, 9)) : FactValue.Undecided;
    }

    private bool IsRested() => Get("hours-since-hard-throwing") is { IsKnown: true } hours && hours.Low >= RestedAfterHours;

    private FactValue Get(string id, string? reading = null) => facts[Vocabulary.Reading(vocabulary[id], reading)!.Slot];

    private void Set(string id, FactValue value) => facts[vocabulary[id].Slot] = value;
}
