using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;

namespace HingeSelector.Screening;

/// <summary>Dates in screens and rosters.</summary>
internal static class Dates
{
    /// <summary>Reads a date; nothing typed is null without a fault.</summary>
    public static DateOnly? Any(Typed typed, DiagnosticBag bag)
    {
        if (typed.IsBlank)
            return null;
        if (Parse.TryDate(typed.Text, out var date))
            return date;
        bag.Add(Problems.BadDate(typed.Span, typed.Shown));
        return null;
    }

    /// <summary>Reads the date of something that has happened: it may not lie after the day of the answer.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="what">What a message calls the dated thing, as the start of a sentence.</param>
    /// <param name="on">Day of the answer.</param>
    /// <param name="bag">Collects faults.</param>
    public static DateOnly? Past(Typed typed, string what, DateOnly on, DiagnosticBag bag)
    {
        var date = Any(typed, bag);
        if (date is not { } day || day <= on)
            return date;
        bag.Add(Problems.DateAhead(typed.Span, what, Print(day), Print(on)));
        return null;
    }

    /// <summary>Year-month-day.</summary>
    public static string Print(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
