using System.Globalization;
using TagPage.Core.Units;
using TagPage.Records.StringingLists;

namespace TagPage.Web.StringingLists;

/// <summary>Lists of stringings in words.</summary>
public static class ListWords
{
    public static string Name(DayOrder order) => order switch
    {
        DayOrder.DayMonthYear => "day, month, year",
        DayOrder.MonthDayYear => "month, day, year",
        _ => "year, month, day",
    };

    public static string Name(DayCount count) => count switch
    {
        DayCount.Since1900 => "days counted from 1900, as most spreadsheets do",
        DayCount.Since1904 => "days counted from 1904, as some older ones do",
        _ => "no days: refuse these lines",
    };

    public static string Name(DecimalMark mark) => mark == DecimalMark.Point ? "a point before the decimals" : "a comma before the decimals";

    public static string Name(TensionUnit unit) => unit == TensionUnit.Lb ? "pounds (lb)" : "kilograms (kg)";

    public static string Name(LineState state) => state switch
    {
        LineState.New => "new",
        LineState.Changed => "new, and fills in what was missing on file",
        LineState.Doubted => "new, in doubt",
        LineState.There => "there already",
        _ => "refused",
    };

    public static string Title(StringingListState state) => state switch
    {
        StringingListState.Coming => "The list is coming in",
        StringingListState.In => "The list is in",
        StringingListState.Leaving => "The list is being taken back",
        StringingListState.Held => "The list is partly taken back",
        _ => "The list was taken back",
    };

    /// <summary>How a list stands, in its row.</summary>
    public static string Of(StringingListRow list) => list.State switch
    {
        StringingListState.Coming => $"coming in, {list.Done} of {list.Lines} lines",
        StringingListState.In => $"{list.Jobs} {(list.Jobs == 1 ? "job" : "jobs")}",
        StringingListState.Leaving => "being taken back",
        StringingListState.Held => "partly taken back",
        _ => "taken back",
    };

    /// <summary>“9 Jan 2025 or 1 Sep 2025”: what an example may mean.</summary>
    public static string MayMean(OpenHabit<DayOrder> habit) => string.Join(" or ", DayText.Read(habit.Example)!.ByOrder.Where(pair => habit.Left.Contains(pair.Key)).Select(pair => Words.Formats.Day(pair.Value)).Distinct());

    public static string MayMean(OpenHabit<DayCount> habit, DateOnly today) => string.Join(" or ", SerialDay.Read(habit.Example, today).Where(pair => habit.Left.Contains(pair.Key)).Select(pair => Words.Formats.Day(pair.Value)));

    public static string MayMean(OpenHabit<DecimalMark> habit) => string.Join(" or ", AmountText.Read(habit.Example).Values.Select(value => value.ToString("0.00", CultureInfo.InvariantCulture)).Distinct());
}
