namespace HingeSelector.Reading;

/// <summary>Tells texts apart that hold nothing but ordinary characters in ordinary places.</summary>
internal static class PlainYamlText
{
    /// <summary>Whether a text has no tab or other control sign, no sign that some readers take for a line end, and no document mark.</summary>
    public static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            if (c is < ' ' and not '\n' or > '~' and (< '\u00A1' or > '\u1FFF'))
                return false;
        }
        return !IsMark(text, 0) && !HasMark(text);
    }

    private static bool HasMark(string text)
    {
        for (var feed = text.IndexOf('\n', StringComparison.Ordinal); feed >= 0; feed = text.IndexOf('\n', feed + 1))
        {
            if (IsMark(text, feed + 1))
                return true;
        }
        return false;
    }

    private static bool IsMark(string text, int start)
        => start < text.Length && (text[start] == '%' || string.CompareOrdinal(text, start, "---", 0, 3) == 0 || string.CompareOrdinal(text, start, "...", 0, 3) == 0);
}
