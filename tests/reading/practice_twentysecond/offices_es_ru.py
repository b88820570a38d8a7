"""The offices that write Spanish and Russian."""

from practice_twentysecond.firm import Firm

COLUMNAS = Firm(
    language="es",
    layout="transposed",
    file="csv ; cp1252",
    machines="Bomba horizontal BH 80-250,Bomba vertical BV 65",
    positions="LA,LOA;1,2",
    bearing="ball /C3;angular B",
    fits="k5 k6 m5/H7 H6 J7",
    dwg="BH-00000",
    comma=True,
    choices="grease=grasa;oil bath=baño de aceite;locating=fijo;floating=libre;steel=AISI 4140;"
    "cast iron=fundición gris;aluminium=aluminio",
    more={"label": "2"},
    lines="""
HOJA DE DATOS DE RODAMIENTOS Y AJUSTES
Equipo: | {mach}
Plano: | {dwg} | Rev.: | {rev}
Velocidad máxima: | {nmax:rpm} rpm | Vida requerida L10h: | {life:h} h
Material del eje: | {mats} | Material del alojamiento: | {math}

^Ítem | Concepto | *Rodamiento {P} | Ud.
1.1 | Referencia | *{bd} |
1.2 | Función axial | *{role} |
1.3 | Lubricante | *{lub} |
1.4 | Carga radial | *{Fr:N} | N
1.5 | Carga axial | *{Fa:N} | N
2.1 | Diámetro del eje | *{Sd.n:mm} {Sd.c} | mm
2.2 | Rugosidad Ra del eje | *{Sr:µm} | µm
2.3 | Cilindricidad del eje | *{Sc:µm} | µm
2.4 | Alabeo total del eje | *{St:µm} | µm
2.5 | Diámetro del resalte del eje | *{Sa:mm} | mm
@1 2.6 | Radio de acuerdo máx. del eje | *{Sf:mm} | mm
3.1 | Diámetro del alojamiento | *{Hd.n:mm} {Hd.c} | mm
3.2 | Rugosidad Ra del alojamiento | *{Hr:µm} | µm
3.3 | Cilindricidad del alojamiento | *{Hc:µm} | µm
3.4 | Diámetro del resalte del alojamiento | *{Ha:mm} | mm

Dibujado: JMR | | Aprobado: | {day}/06/2025
""".replace("Alabeo total del eje", "Salto radial total del eje"),
)
POSICION = Firm(
    language="es",
    layout="json nested",
    file="json",
    machines="Soplante de lóbulos SL 100,Soplante de lóbulos SL 150",
    positions="lado_accion,lado_engranajes",
    bearing="roller /C3;ball",
    dwg="SL00-000",
    choices="grease=grasa;oil bath=baño de aceite;steel=acero C45;cast iron=fundición GJL-250;aluminium=aluminio;"
    "horizontal=horizontal;vertical=vertical",
    lines="",
    tree={
        "exportacion": {"sistema": "PLM", "fecha": "2025-03-{day}", "version": 2},
        "maquina": {
            "denominacion": "{mach}",
            "numero_plano": "{dwg}",
            "revision": "{rev}",
            "velocidad_maxima_rpm": "{nmax:rpm}",
            "masa_rotor_kg": "{mass:kg}",
            "material_eje": "{mats}",
            "material_alojamiento": "{math}",
            "@1 temperatura_ambiente_C": "{tamb:°C}",
            "@0 distancia_entre_rodamientos_mm": "{span:mm}",
        },
        "apoyos": {
            "{P}": {
                "rodamiento": {
                    "referencia": "{bd}",
                    "lubricacion": "{lub}",
                    "carga_radial_N": "{Fr:N}",
                    "carga_axial_N": "{Fa:N}",
                },
                "asiento_eje": {
                    "diametro_max_mm": "{Sd.max:mm}",
                    "diametro_min_mm": "{Sd.min:mm}",
                    "rugosidad_Ra_um": "{Sr:µm}",
                    "cilindricidad_um": "{Sc:µm}",
                    "diametro_hombro_mm": "{Sa:mm}",
                },
                "asiento_alojamiento": {
                    "diametro_max_mm": "{Hd.max:mm}",
                    "diametro_min_mm": "{Hd.min:mm}",
                    "rugosidad_Ra_um": "{Hr:µm}",
                    "cilindricidad_um": "{Hc:µm}",
                    "@1 diametro_hombro_mm": "{Ha:mm}",
                },
            },
        },
        "proveedor_fundicion": "según pedido",
    },
)
ASIENTOS = Firm(
    language="es",
    layout="row per seat",
    file="xlsx",
    machines="Motor de inducción MI 180,Motor de inducción MI 225",
    positions="delantero,trasero",
    bearing="ball /C3;ball -2Z",
    fits="k5 k6 j5/H6 H7 J6",
    dwg="MI-000-00",
    comma=True,
    choices="grease=grasa;oil bath=baño de aceite",
    more={"sheet": "Asientos"},
    lines="""
Tabla de asientos de rodamientos | | | | | | Hoja | 1/1
Producto | {mach} | | | Plano n.º | {dwg} | Edición | {rev}
Régimen máximo (r/min) | {nmax:r/min} | | | Masa del rotor (kg) | {mass:kg}

^N.º | Pieza | Asiento | Rodamiento | Diámetro nominal (mm) | Clase | Desv. superior (mm) | Desv. inferior (mm) | \
Diámetro de apoyo (mm) | Cilindricidad (mm) | @0 Salto axial del apoyo (mm) | Ra (µm) | | Observaciones
[p
{#} | Eje | {P} | {bd} | {Sd.n:mm} | {Sd.c} | {Sd.u:mm} | {Sd.l:mm} | {Sa:mm} | {Sc:mm:3} | @0 {Sb:mm:3} | {Sr:µm} | | \
rectificado
]
[p
{#} | Tapa | {P} | {bd} | {Hd.n:mm} | {Hd.c} | {Hd.u:mm} | {Hd.l:mm} | {Ha:mm} | {Hc:mm:3} | @0 {Hb:mm:3} | \
{Hr:µm} | | \
mandrinado
]

Carga radial {1.P} (N) | {1.Fr:N} | | | Carga radial {2.P} (N) | {2.Fr:N}
Carga axial {1.P} (N) | {1.Fa:N} | | | Carga axial {2.P} (N) | {2.Fa:N}
Lubricación | {lub}
""",
)
STROKI = Firm(
    language="ru",
    layout="row per position",
    file="csv ; cp1251",
    machines="Насос консольный НК 80-50,Насос секционный НС 60-99",
    positions="передняя,задняя",
    bearing="ball;ball /C3",
    fits="k5 k6 m6/H7 H6 J7",
    dwg="НК.00.00.000",
    comma=True,
    choices="grease=смазка консистентная;oil bath=масляная ванна;locating=фиксирующая;floating=плавающая;"
    "steel=сталь 40Х;cast iron=СЧ20;aluminium=АК9",
    lines="""
Таблица посадочных мест подшипников
Изделие | {mach} | | Чертеж № | {dwg} | Изм. | {rev}
Частота вращения макс., об/мин | {nmax:об/мин} | | Материал вала | {mats} | Материал корпуса | {math}

^№ п/п | Опора | Подшипник | @0 Тип опоры | Вал, мм | Вал Ra, мкм | Цилиндричность вала, мкм | \
Диаметр заплечика вала, мм | \
Корпус, мм | Корпус Ra, мкм | Цилиндричность отверстия корпуса, мкм | Диаметр заплечика корпуса, мм | \
Радиальная нагрузка, Н | \
Осевая нагрузка, Н | Смазка | Группа зазора | @1 Рабочая температура подшипника, °C | Примечание
p {#} | {P} | {bd} | @0 {role} | {Sd.n:мм} {Sd.c} | {Sr:мкм} | {Sc:мкм} | {Sa:мм} | {Hd.n:мм} {Hd.c} | {Hr:мкм} | \
{Hc:мкм} | {Ha:мм} | {Fr:Н} | {Fa:Н} | {lub} | {cl} | @1 {top:°C} | {=;см. ТТ п. 4}

@0 Температура, °C | {?top+tamb+thou:°C}
@1 Температура, °C | {?tamb+thou:°C}
Разработал | Ветров | {day}.02.2025
""",
)
SPISOK = Firm(
    language="ru",
    layout="long",
    file="xlsx",
    machines="Электродвигатель ЭД 160,Электродвигатель ЭД 200",
    positions="А,Б",
    bearing="ball /C3;roller /C3",
    dwg="ЭД-0000",
    comma=True,
    choices="grease=пластичная смазка;oil bath=масляная ванна;horizontal=горизонтальное;vertical=вертикальное",
    more={"sheet": "Параметры", "label": "1"},
    lines="""
^Параметр | Обозначение | Значение | Ед. изм. | Документ
Наименование изделия | | {mach} | |
Номер чертежа | | {dwg} | |
Изменение | | {rev} | |
Максимальная частота вращения | nmax | {nmax:об/мин} | об/мин | ТЗ
Масса ротора | m | {mass:кг} | кг | расчет
Расстояние между опорами | L | {span:мм} | мм | чертеж
@1 Расположение вала | | {ori} | |

^Опора {1.P} | Обозначение | Значение | Ед. изм. | Документ
Подшипник | | {1.bd} | | спецификация
Радиальная нагрузка | Fr | {1.Fr:Н} | Н | расчет
Осевая нагрузка | Fa | {1.Fa:Н} | Н | расчет
Вид смазки | | {1.lub} | |
Диаметр шейки вала | d | {1.Sd.n:мм} {1.Sd.c} ({1.Sd.u:мм}; {1.Sd.l:мм}) | мм | чертеж
Шероховатость шейки вала | Ra | {1.Sr:мкм} | мкм | чертеж
Допуск цилиндричности шейки вала | | {1.Sc:мм:3} | мм | чертеж
Диаметр заплечика вала | da | {1.Sa:мм} | мм | каталог
Диаметр отверстия корпуса | D | {1.Hd.n:мм} {1.Hd.c} ({1.Hd.u:мм}; {1.Hd.l:мм}) | мм | чертеж
Шероховатость отверстия корпуса | Ra | {1.Hr:мкм} | мкм | чертеж
Допуск цилиндричности отверстия корпуса | | {1.Hc:мм:3} | мм | чертеж

^Опора {2.P} | Обозначение | Значение | Ед. изм. | Документ
Подшипник | | {2.bd} | | спецификация
Радиальная нагрузка | Fr | {2.Fr:Н} | Н | расчет
Осевая нагрузка | Fa | {2.Fa:Н} | Н | расчет
Вид смазки | | {2.lub} | |
Диаметр шейки вала | d | {2.Sd.n:мм} {2.Sd.c} ({2.Sd.u:мм}; {2.Sd.l:мм}) | мм | чертеж
Шероховатость шейки вала | Ra | {2.Sr:мкм} | мкм | чертеж
Допуск цилиндричности шейки вала | | {2.Sc:мм:3} | мм | чертеж
Диаметр заплечика вала | da | {2.Sa:мм} | мм | каталог
Диаметр отверстия корпуса | D | {2.Hd.n:мм} {2.Hd.c} ({2.Hd.u:мм}; {2.Hd.l:мм}) | мм | чертеж
Шероховатость отверстия корпуса | Ra | {2.Hr:мкм} | мкм | чертеж
Допуск цилиндричности отверстия корпуса | | {2.Hc:мм:3} | мм | чертеж
""",
)
GRUPPY = Firm(
    language="ru",
    layout="two-row headings",
    file="xlsx",
    machines="Газодувка ГД-12,Газодувка ГД-20,Газодувка ГД-32,Газодувка ГД-50",
    positions="со стороны привода,со стороны шестерен",
    bearing="ball;roller",
    dwg="ГД00.000",
    comma=True,
    count=2,
    choices="grease=консистентная;oil bath=масляная ванна",
    more={"sheet": "Посадки", "merge": "1"},
    lines="""
Посадки подшипников газодувок | | | | | утвердил Лапин {day}.04.2025
Предельные отклонения в мкм, размеры в мм

^Изделие | Сторона | Подшипник | | | Шейка вала | | | | | Расточка корпуса | | | | | ~ | ~
^ | | Обозначение | Fr, Н | Fa, Н | Номинал | Поле допуска | es | ei | Ra, мкм | Номинал | Поле допуска | ES | EI | \
Ra, мкм | \
Вид смазки | nmax, об/мин
[m
p {mach} | {P} | {bd} | {Fr:Н} | {Fa:Н} | {Sd.n:мм} | {Sd.c} | {Sd.u:мкм} | {Sd.l:мкм} | {Sr:мкм} | {Hd.n:мм} | \
{Hd.c} | \
{Hd.u:мкм} | {Hd.l:мкм} | {Hr:мкм} | {lub} | {nmax:об/мин}
]
""",
)
ODD = (COLUMNAS, POSICION, STROKI, SPISOK)
EVEN = (ASIENTOS, GRUPPY)
