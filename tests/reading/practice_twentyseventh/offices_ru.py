"""The offices that write Russian."""

from practice_twentyseventh.paper import Office

#: A calculation for the customer: quantities down, bearings across, symbol and unit before them.
CALCULATION = Office(
    language="ru",
    kind="transposed",
    file="csv ; cp1251",
    comma=True,
    units="column",
    machines=(
        "Винтовая воздуходувка ВВ-15: 6306/C3 + NU206",
        "Шпиндель токарного станка ШТ-2: 7008C/P4 + 6007/C3",
        "Натяжной ролик НР-8: 6205-2RS + 6204-2RS",
    ),
    positions="Опора А,Опора Б",
    drawing="АБ.000000",
    words="grease=пластичная смазка;oil bath=масляная ванна;locating=фиксирующая;floating=плавающая;"
    "spring-loaded=поджата пружиной",
    page="""
Расчёт подшипниковых узлов
Изделие | {m}
Номер чертежа | {dwg} | Изм. | {rev}
Разработал | {pick Зимин/Орлова} | Дата | {day}.08.2025

# Параметр | Обозн. | Ед. изм. | {1.st} | {2.st} | Примечание
Обозначение подшипника | | | {1.brg} | {2.brg} | по каталогу
Внутренний диаметр | d | мм | {1.d} | {2.d}
Наружный диаметр | D | мм | {1.D} | {2.D}
Ширина | B | мм | {1.B} | {2.B}
Динамическая грузоподъёмность | C | кН | {1.C:kN} | {2.C:kN} | по каталогу
Радиальная нагрузка | Fr | Н | {1.Fr} | {2.Fr}
Осевая нагрузка | Fa | Н | {1.Fa} | {2.Fa}
@01 Осевая функция опоры | | | {1.role} | {2.role}
Способ смазки | | | {1.lub} | {2.lub}
Диаметр посадочной шейки вала | | мм | {1.ss.n} {1.ss.c} ({1.ss.u}/{1.ss.l}) | {2.ss.n} {2.ss.c} ({2.ss.u}/{2.ss.l})
Цилиндричность шейки вала | | мкм | {1.scyl:u} | {2.scyl:u}
Шероховатость шейки вала | Ra | мкм | {1.sra} | {2.sra}
Диаметр заплечика вала | | мм | {1.sda} | {2.sda}
Торцевое биение заплечика вала | | мкм | {1.sax:u} | {2.sax:u}
Диаметр отверстия корпуса | | мм | {1.hs.n} {1.hs.c} ({1.hs.u}/{1.hs.l}) | {2.hs.n} {2.hs.c} ({2.hs.u}/{2.hs.l})
Цилиндричность отверстия корпуса | | мкм | {1.hcyl:u} | {2.hcyl:u}
Шероховатость отверстия корпуса | Ra | мкм | {1.hra} | {2.hra}
Диаметр заплечика корпуса | | мм | {1.hda} | {2.hda}
Торцевое биение заплечика корпуса | | мкм | {1.hax:u} | {2.hax:u}
""",
)

#: A parts list that carries the seats with the shaft, the housing and the bearings.
PARTS = Office(
    language="ru",
    kind="parts list",
    file="xlsx",
    sheet="Спецификация",
    comma=True,
    machines=(
        "Шестерённый насос ШН-10: 6204 + 6203",
        "Турбогенератор ТГ-25: 7006C/P4 + 6006/C3",
        "Привод мешалки ПМ-7: 6308-2Z + 6208-2Z",
    ),
    positions="передняя,задняя",
    drawing="ТК0000.000",
    words="steel=Сталь 40Х;cast iron=СЧ20",
    fixed={"housing_material": "cast iron"},
    page="""
Спецификация подшипниковых узлов
Сборочная единица | {m}
Чертёж | {dwg} | Редакция | {rev}
Частота вращения макс., об/мин | {nmax}

# Поз. | Деталь | Опора | Обозначение | Кол. | Посадочный диаметр, мм | Поле допуска | Верхн. откл., мкм |\
Нижн. откл., мкм | Ra, мкм | Цилиндричность, мкм | Диаметр заплечика, мм | Материал
[positions]
{#} | Подшипник | {st} | {brg} | 1
{#} | Вал | {st} | {pick ВЛ-102/ВЛ-115} | 1 | {ss.n} | {ss.c} | {ss.u:u} | {ss.l:u} | {sra} | {scyl:u} | {sda} |\
{smat}
{#} | Корпус | {st} | {pick КР-201/КР-214} | 1 | {hs.n} | {hs.c} | {hs.u:u} | {hs.l:u} | {hra} | {hcyl:u} | {hda} |\
{hmat}
[end]
""",
)
ODD = (CALCULATION,)
EVEN = (PARTS,)
