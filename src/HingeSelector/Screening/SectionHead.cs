using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>Date and name at the head of a section.</summary>
internal sealed class SectionHead
{
    /// <summary>Day of the section's answers; null when not said.</summary>
    public DateOnly? Date { get; set; }

    /// <summary>Whether a date was typed but could not be used; then its absence is no second fault.</summary>
    public bool Faulty { get; private set; }

    /// <summary>Who measured or asked; null when not said.</summary>
    public string? By { get; set; }

    /// <summary>Reads the date of the section.</summary>
    public void ReadDate(Typed typed, string what, DateOnly on, DiagnosticBag bag)
    {
        var before = bag.ErrorCount;
        Date = Dates.Past(typed, what, on, bag);
        Faulty = bag.ErrorCount > before;
    }
}
