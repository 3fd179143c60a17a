using HingeSelector.Diagnostics;
using HingeSelector.Quantities;

namespace HingeSelector.Words;

/// <summary>A word that files and rules may use: what it means, how it is measured, how long it counts.</summary>
public sealed record Word
{
    /// <summary>Name in every file: small letters, digits, hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>Name for people.</summary>
    public required string Label { get; init; }

    /// <summary>Which input or computation it belongs to.</summary>
    public required WordAbout About { get; init; }

    /// <summary>What its value looks like.</summary>
    public required WordKind Kind { get; init; }

    /// <summary>What a number measures.</summary>
    public Dimension Dimension { get; init; }

    /// <summary>Unit for forms, columns and printing; null for bare numbers.</summary>
    public Unit? Unit { get; init; }

    /// <summary>Closed list of values of a choice or set.</summary>
    public IReadOnlyList<string> Values { get; init; } = [];

    /// <summary>The sides of some of the values of a set; null when none has sides.</summary>
    public ValueSides? ValueSides { get; init; }

    /// <summary>The values as rules name them.</summary>
    public IReadOnlyList<string> RuleValues => ValueSides?.Plain ?? Values;

    /// <summary>All bits that mean one of <see cref="RuleValues"/>.</summary>
    public ulong MaskOf(int place) => ValueSides?.MaskOf(place) ?? 1UL << place;

    /// <summary>Whether it may be known for several pulls; rules then read one pull by name.</summary>
    public bool ByPull { get; init; }

    /// <summary>Whether left and right are measured apart.</summary>
    public bool Sided { get; init; }

    /// <summary>Which end is the worse one.</summary>
    public WorseEnd Worse { get; init; }

    /// <summary>What the reader accepts, in base units.</summary>
    public (double Low, double High)? Range { get; init; }

    /// <summary>What most athletes show, in base units.</summary>
    public (double Low, double High)? Usual { get; init; }

    /// <summary>Standard error of one reading, in base units; null when none is stated.</summary>
    public double? Error { get; init; }

    /// <summary>Standard error as a share of the value; null when none is stated.</summary>
    public double? ErrorShare { get; init; }

    /// <summary>Source of the error.</summary>
    public string? ErrorSource { get; init; }

    /// <summary>How long an answer counts.</summary>
    public Lifetime Lifetime { get; init; } = new(null, null);

    /// <summary>Groups that can be answered or read together.</summary>
    public IReadOnlyList<string> Groups { get; init; } = [];

    /// <summary>First day on which a blanket answer covers it.</summary>
    public DateOnly InForceFrom { get; init; } = DateOnly.MinValue;

    /// <summary>Minutes that measuring or asking it takes; null when nobody has said.</summary>
    public double? Minutes { get; init; }

    /// <summary>What people show who were not measured yet; null when no spread is on file.</summary>
    public TypicalSpread? Typical { get; init; }

    /// <summary>Why no explanation suggests another value; null when one may.</summary>
    public string? NotSuggested { get; init; }

    /// <summary>Page in content/protocols/.</summary>
    public string? Protocol { get; init; }

    /// <summary>What it means, for computed words.</summary>
    public string? Meaning { get; init; }

    /// <summary>Whether variants may answer with several values.</summary>
    public bool Many { get; init; }

    /// <summary>Whether what was once named, or a yes, stays after its lifetime: an operation does not go away because nobody asked again.</summary>
    public bool NamedStays { get; init; }

    /// <summary>Values that stay when <see cref="NamedStays"/>, one bit each: all but a no and those that are about this year.</summary>
    public ulong LastingBits
    {
        get
        {
            var bits = 0UL;
            for (var i = 0; i < RuleValues.Count; i++)
                bits |= RuleValues[i] == "no" || RuleValues[i].EndsWith("-this-year", StringComparison.Ordinal) ? 0 : MaskOf(i);
            return bits;
        }
    }

    /// <summary>Id of a word of the same sides below whose value this one cannot lie: the worst pain is at least the pain at rest.</summary>
    public string? NotBelow { get; init; }

    /// <summary>Whether a computed word can come out as not applicable; a measured one always can.</summary>
    public bool MayNotApply { get; init; }

    /// <summary>Names of the readings in slot order, the bare word as the empty name; no names when only the bare word is read.</summary>
    public IReadOnlyList<string> Readings { get; init; } = [];

    /// <summary>Where it is declared.</summary>
    public SourceSpan Span { get; init; } = SourceSpan.None;

    /// <summary>First slot of the word; readings follow in order.</summary>
    public int Slot { get; init; }

    /// <summary>Whether it belongs to a candidate.</summary>
    public bool OfCandidate => About is WordAbout.Variant or WordAbout.Candidate;

    /// <summary>Whether it is typed in by people.</summary>
    public bool IsMeasured => About is WordAbout.Athlete or WordAbout.Screen or WordAbout.Day;

    /// <summary>Standard error of a reading of a given size, in base units; 0 when none is stated.</summary>
    public double ErrorOf(double value) => Error ?? (ErrorShare is { } share ? Math.Abs(value) * share / 100 : 0);

    /// <summary>Prints a value of this word for people.</summary>
    public string Print(FactValue value) => value.State switch
    {
        FactState.NotMeasured => "not measured",
        FactState.Refused => "refused",
        FactState.Expired => "expired",
        FactState.Undecided => "not decided",
        FactState.NotApplicable => "not applicable",
        _ when Kind == WordKind.Number => PrintNumber(value),
        _ => PrintValues(value.Bits),
    };

    /// <summary>Prints a number of this word's dimension.</summary>
    public string Print(double value) => QuantityText.Print(value, Unit);

    private string PrintNumber(FactValue value)
    {
        if (value.IsExact)
            return Print(value.Low);
        if (double.IsNegativeInfinity(value.Low))
            return "at most " + Print(value.High);
        return double.IsPositiveInfinity(value.High) ? "at least " + Print(value.Low) : $"{Print(value.Low)} to {Print(value.High)}";
    }

    private string PrintValues(ulong bits)
    {
        var names = Values.Where((_, i) => (bits & (1UL << i)) != 0).ToList();
        return names.Count == 0 ? "none" : string.Join(" + ", names);
    }
}
